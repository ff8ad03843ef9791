package org.lowfirst.app.journal;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.Entry;

/**
 * Reads and writes facts as lines of JSON, members author, effectiveAt, kind, payload, place and version, in the order they
 * are to be entered.
 */
public final class FactLines {

    private static final Pattern TIME = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9:.]{12}Z");

    private static final Pattern DAY = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");

    private static final Pattern MONTH = Pattern.compile("[0-9]{4}-[0-9]{2}");

    /** The month of a test as it ends a stamp. */
    private static final Pattern STAMPED = Pattern.compile("(.* )([0-9]{4})/([0-9]{2})");

    private static final int MID_MONTH = 15;

    private FactLines() {}

    /**
     * @param name of the file, for messages
     * @param shift added to every time in the file; days and months, those at the end of stamps too, move by its whole days
     * @throws IllegalArgumentException when a line is not such a fact, with file, line and column
     */
    public static List<FactLine> read(String name, InputStream in, Duration shift) throws IOException {
        List<FactLine> facts = new ArrayList<>();
        BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
        int number = 0;
        for (String line = reader.readLine(); line != null; line = reader.readLine()) {
            number++;
            try {
                facts.add(fact(new Payload(shifted(JsonText.parseObject(line), shift))));
            } catch (JsonFault e) {
                throw new IllegalArgumentException(
                        name + ", line " + number + ", column " + e.column() + ": " + e.getMessage(), e);
            }
        }
        return List.copyOf(facts);
    }

    /** One entry as a line that {@link #read} reads back. */
    public static String write(Entry entry, long place) {
        FactCodec<?> codec = FactCodecs.getCodec(entry.fact());
        return CanonicalJson.write(new Payload()
                .with("author", entry.origin().author())
                .with("effectiveAt", TimeText.write(entry.origin().effectiveAt()))
                .with("kind", codec.kind())
                .with("payload", codec.encode(entry.fact()))
                .with("place", place)
                .with("version", (long) codec.version())
                .members());
    }

    private static FactLine fact(Payload line) {
        return new FactLine(
                Parts.instant(line.text("effectiveAt")),
                line.text("author"),
                FactCodecs.decode(
                        line.text("kind"),
                        (int) line.number("version"),
                        line.part("payload", payload -> payload).members()),
                line.number("place"));
    }

    private static Map<String, @Nullable Object> shifted(Map<?, ?> object, Duration shift) {
        Map<String, @Nullable Object> shifted = new TreeMap<>();
        object.forEach((name, value) -> shifted.put((String) name, shiftedValue(value, shift)));
        return shifted;
    }

    private static @Nullable Object shiftedValue(@Nullable Object value, Duration shift) {
        if (value instanceof Map<?, ?> object) {
            return shifted(object, shift);
        } else if (value instanceof List<?> list) {
            return list.stream().map(element -> shiftedValue(element, shift)).toList();
        } else if (value instanceof String text && TIME.matcher(text).matches()) {
            return TimeText.write(Parts.instant(text).plus(shift));
        } else if (value instanceof String text && DAY.matcher(text).matches()) {
            return Parts.day(text).plusDays(shift.toDays()).toString();
        } else if (value instanceof String text && MONTH.matcher(text).matches()) {
            return shifted(YearMonth.parse(text), shift).toString();
        } else if (value instanceof String text) {
            return stamp(text, shift);
        }
        return value;
    }

    private static String stamp(String text, Duration shift) {
        Matcher stamped = STAMPED.matcher(text);
        return stamped.matches()
                ? stamped.group(1)
                        + shifted(YearMonth.parse(stamped.group(2) + "-" + stamped.group(3)), shift)
                                .toString()
                                .replace('-', '/')
                : text;
    }

    private static YearMonth shifted(YearMonth month, Duration shift) {
        return YearMonth.from(month.atDay(MID_MONTH).plusDays(shift.toDays()));
    }
}
