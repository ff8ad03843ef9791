package org.lowfirst.station.rules;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;

/** The settings of one rule while it is being read: each key is asked for once, and none may be left over. */
final class RuleSettings {

    static final String SPECIFICATIONS = "specifications";
    static final String MATERIALS = "materials";

    private static final Pattern FRACTION = Pattern.compile("(\\d{1,4})\\s*/\\s*(\\d{1,4})");

    private final Map<String, String> values;
    private final Set<String> asked = new HashSet<>();

    RuleSettings(Map<String, String> values) {
        this.values = values;
    }

    /** The keys nobody asked for. */
    Set<String> leftOver() {
        Set<String> left = new TreeSet<>(values.keySet());
        left.removeAll(asked);
        return left;
    }

    @Nullable
    String findText(String key) {
        asked.add(key);
        return values.get(key);
    }

    String text(String key) {
        String value = findText(key);
        if (value == null) {
            throw new MalformedSetting(key, "The setting \"" + key + "\" is missing.");
        }
        return value;
    }

    int count(String key) {
        String value = text(key);
        if (!value.matches("\\d{1,7}")) {
            throw new MalformedSetting(key, "\"" + value + "\" is not a whole number.");
        }
        return Integer.parseInt(value);
    }

    int countAboveZero(String key) {
        int value = count(key);
        if (value == 0) {
            throw new MalformedSetting(key, "\"" + key + "\" must be above 0.");
        }
        return value;
    }

    Fraction fraction(String key) {
        String value = text(key);
        Matcher matcher = FRACTION.matcher(value);
        if (!matcher.matches()) {
            throw new MalformedSetting(key, "\"" + value + "\" is not a fraction such as 5/4.");
        }
        return made(key, () -> new Fraction(Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2))));
    }

    GaugePressure pressure(String key) {
        return made(key, () -> WrittenQuantity.pressure(text(key)));
    }

    Temperature temperature(String key) {
        return made(key, () -> WrittenQuantity.temperature(text(key)));
    }

    Volume volume(String key) {
        return made(key, () -> WrittenQuantity.volume(text(key)));
    }

    YearMonth month(String key) {
        return date(key, text(key), YearMonth::parse, "a month such as 1946-01");
    }

    LocalDate day(String key) {
        return date(key, text(key), LocalDate::parse, "a day such as 2026-06-30");
    }

    @Nullable
    LocalDate findDay(String key) {
        String value = findText(key);
        return value == null ? null : date(key, value, LocalDate::parse, "a day such as 2026-06-30");
    }

    private static <T> T date(String key, String value, Function<String, T> parse, String shape) {
        try {
            return parse.apply(value);
        } catch (DateTimeParseException unreadable) {
            throw new MalformedSetting(key, "\"" + value + "\" is not " + shape + ".");
        }
    }

    /** Names separated by commas, at least one, in the order written. */
    List<String> names(String key) {
        Set<String> names = new LinkedHashSet<>();
        for (String name : text(key).split(",", -1)) {
            if (name.isBlank()) {
                throw new MalformedSetting(key, "There is an empty name in \"" + text(key) + "\".");
            }
            if (!names.add(name.strip())) {
                throw new MalformedSetting(key, "\"" + name.strip() + "\" is named twice.");
            }
        }
        return new ArrayList<>(names);
    }

    <E extends Enum<E>> E choice(String key, Class<E> type) {
        return choice(key, type, text(key));
    }

    <E extends Enum<E>> Set<E> choices(String key, Class<E> type) {
        Set<E> chosen = EnumSet.noneOf(type);
        for (String word : names(key)) {
            chosen.add(choice(key, type, word));
        }
        return chosen;
    }

    private static <E extends Enum<E>> E choice(String key, Class<E> type, String written) {
        for (E candidate : type.getEnumConstants()) {
            if (word(candidate).equals(written)) {
                return candidate;
            }
        }
        StringBuilder known = new StringBuilder();
        for (E candidate : type.getEnumConstants()) {
            known.append(known.isEmpty() ? "" : ", ").append(word(candidate));
        }
        throw new MalformedSetting(key, "\"" + written + "\" is not one of: " + known + ".");
    }

    /** How an enum constant is written in a rule file. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    AppliesTo appliesTo() {
        Set<String> codes = findText(SPECIFICATIONS) == null ? Set.of() : new TreeSet<>(names(SPECIFICATIONS));
        Set<WallMaterial> walls = findText(MATERIALS) == null ? Set.of() : choices(MATERIALS, WallMaterial.class);
        return new AppliesTo(codes, walls);
    }

    private static <T> T made(String key, Supplier<T> maker) {
        try {
            return maker.get();
        } catch (MalformedSetting already) {
            throw already;
        } catch (IllegalArgumentException wrong) {
            throw new MalformedSetting(key, String.valueOf(wrong.getMessage()));
        }
    }
}
