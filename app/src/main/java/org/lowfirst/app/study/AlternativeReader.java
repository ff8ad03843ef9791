package org.lowfirst.app.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.file.Kind;
import org.lowfirst.app.file.ListReader;
import org.lowfirst.app.file.Measure;
import org.lowfirst.app.file.MeasureReader;
import org.lowfirst.app.file.NameReader;
import org.lowfirst.app.file.NearestKey;
import org.lowfirst.app.file.NumberReader;
import org.lowfirst.app.file.Place;
import org.lowfirst.app.file.PlausibleRange;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.Section;
import org.lowfirst.app.file.Tree;
import org.lowfirst.app.file.Tree.Mapping;
import org.lowfirst.app.file.Tree.Scalar;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.study.Alternative;
import org.lowfirst.planning.study.Booster;
import org.lowfirst.planning.study.ExchangeHabit;
import org.lowfirst.planning.study.SupplyKind;
import org.lowfirst.planning.study.When;

/** Reads the alternatives of a study file; one line may stand for several bank sizes. */
final class AlternativeReader {

    private static final List<String> KEYS =
            List.of("name", "bank", "stored", "supply", "exchange", "together", "residual", "booster");
    private static final List<String> BOOSTER_KEYS = List.of("inlet", "price", "upkeep_per_year", "boosted_fill");
    private static final Pattern SIZES = Pattern.compile("([0-9]{1,3})(?:\\s+to\\s+([0-9]{1,3}))?");
    private static final Map<String, When> HABITS = Map.of(
            "a fill would fail", When.A_FILL_WOULD_FAIL,
            "the next might fail", When.THE_NEXT_MIGHT_FAIL,
            "lowest at residual", When.LOWEST_AT_RESIDUAL);
    private static final int MOST = 100;

    private final Map<String, SupplyKind> kinds;
    private final NumberReader numbers;
    private final Problems problems;

    AlternativeReader(Map<String, SupplyKind> kinds, NumberReader numbers, Problems problems) {
        this.kinds = kinds;
        this.numbers = numbers;
        this.problems = problems;
    }

    /** One line: an alternative, or one for each of several bank sizes. */
    record Ways(String name, Place namePlace, List<Alternative> ways) implements ListReader.Named {}

    List<Alternative> read(Section file) {
        return new ListReader("alternatives", "alternative", "name: three, bank: 3", MOST, "a study", problems)
                .read(file, this::line).stream()
                        .flatMap(line -> line.ways().stream())
                        .toList();
    }

    private Optional<Ways> line(Mapping mapping, int number) {
        Section section = new Section(mapping, "an alternative", KEYS, problems);
        Optional<String> name = new NameReader(problems).read(section, "alternative", number, "three");
        String of = " of " + NameReader.label("alternative", name, number);
        List<Integer> sizes = sizes(section, of);
        Optional<SupplyKind> supply = supply(section, of);
        long stored = numbers.optionalWhole(section, "stored", "number of supplies in store" + of, "1")
                .orElse(0L);
        Optional<ExchangeHabit> habit = habit(section, of);
        @Nullable Booster booster = booster(section, of);
        section.reportStrangers();
        if (name.isEmpty() || sizes.isEmpty() || supply.isEmpty() || habit.isEmpty()) {
            return Optional.empty();
        }
        List<Alternative> ways = new ArrayList<>();
        for (int size : sizes) {
            String own = sizes.size() == 1 ? name.get() : name.get() + " " + size;
            note(section, own);
            ways.add(new Alternative(
                    own,
                    size,
                    (int) Math.max(-1, Math.min(stored, 1_000_000_000)),
                    supply.get(),
                    habit.get(),
                    booster));
        }
        return Optional.of(new Ways(name.get(), section.placeOf("name"), ways));
    }

    private void note(Section section, String name) {
        String of = " of alternative " + name;
        numbers.note("bank size" + of, section.placeOf("bank"));
        numbers.note("number of supplies in store" + of, section.placeOf("stored"));
        numbers.note("number of supplies in a delivery" + of, section.placeOf("together"));
        numbers.note("exchange habit" + of, section.placeOf("exchange"));
        numbers.note("residual" + of, section.placeOf("residual"));
        for (String what :
                List.of("inlet", "price of the booster", "upkeep of the booster", "price of a boosted fill")) {
            numbers.note(what + of, section.placeOf("booster"));
        }
        for (String what : List.of(
                "water volume of the supplies",
                "least delivered reading",
                "highest delivered reading",
                "price of a supply",
                "rent for a day")) {
            numbers.note(what + of, section.placeOf("supply"));
        }
    }

    private List<Integer> sizes(Section section, String of) {
        Optional<Scalar> scalar = section.required("bank", "bank size" + of, "3");
        if (scalar.isEmpty()) {
            return List.of();
        }
        Matcher matcher = SIZES.matcher(scalar.get().text().strip());
        if (!matcher.matches()) {
            problems.error(
                    scalar.get().place(),
                    "The bank size" + of + " (" + scalar.get().text()
                            + ") must be a number of supplies, for example 3, or several, for example 1 to 6.");
            return List.of();
        }
        int low = Integer.parseInt(matcher.group(1));
        int high = matcher.group(2) == null ? low : Integer.parseInt(matcher.group(2));
        if (high < low) {
            problems.error(
                    scalar.get().place(),
                    "The bank sizes" + of + " (" + scalar.get().text() + ") must go upwards. Write " + high + " to "
                            + low + ".");
            return List.of();
        }
        List<Integer> sizes = new ArrayList<>();
        for (int size = low; size <= high; size++) {
            sizes.add(size);
        }
        return sizes;
    }

    private Optional<SupplyKind> supply(Section section, String of) {
        if (section.find("supply").isEmpty() && kinds.size() == 1) {
            return kinds.values().stream().findFirst();
        }
        Optional<Scalar> scalar = section.required("supply", "kind of supply" + of, "large");
        Optional<SupplyKind> kind = scalar.flatMap(name -> Optional.ofNullable(kinds.get(name.text())));
        if (scalar.isPresent() && kind.isEmpty() && !kinds.isEmpty()) {
            List<String> known = kinds.keySet().stream().sorted().toList();
            problems.error(
                    scalar.get().place(),
                    "The supply \"" + scalar.get().text() + "\" is not under supplies. It lists "
                            + String.join(", ", known) + "."
                            + NearestKey.find(scalar.get().text(), known)
                                    .map(nearest -> " Maybe " + nearest + " was meant.")
                                    .orElse(""));
        }
        return kind;
    }

    private Optional<ExchangeHabit> habit(Section section, String of) {
        long together = numbers.optionalWhole(section, "together", "number of supplies in a delivery" + of, "1")
                .orElse(1L);
        @Nullable
        GaugePressure residual = new MeasureReader(section, problems)
                .optional("residual", "residual" + of, PlausibleRange.of("residual", Kind.PRESSURE))
                .map(Measure::value)
                .orElse(null);
        Optional<Scalar> scalar = section.optional("exchange", "exchange habit" + of, "a fill would fail");
        if (section.find("exchange").isPresent() && scalar.isEmpty()) {
            return Optional.empty();
        }
        String text = scalar.map(Scalar::text).orElse("a fill would fail");
        When when = HABITS.get(text.strip().toLowerCase(Locale.ROOT));
        if (when == null) {
            problems.error(
                    section.placeOf("exchange"),
                    "The exchange habit" + of + " (" + text + ") must be \"a fill would fail\", \"the next might fail\""
                            + " or \"lowest at residual\".");
            return Optional.empty();
        }
        return Optional.of(new ExchangeHabit(when, (int) Math.max(-1, Math.min(together, 1_000_000_000)), residual));
    }

    private @Nullable Booster booster(Section section, String of) {
        Optional<Tree> tree = section.find("booster");
        if (tree.isEmpty()) {
            return null;
        }
        if (!(tree.get() instanceof Mapping mapping)) {
            problems.error(
                    section.placeOf("booster"),
                    "The booster" + of + " is " + tree.get().kind()
                            + ". Write its keys, for example booster: {inlet: 20" + " bar, price: 4000}.");
            return null;
        }
        Section keys = new Section(mapping, "a booster", BOOSTER_KEYS, problems);
        Optional<Measure<GaugePressure>> inlet = new MeasureReader(keys, problems)
                .required("inlet", "inlet" + of, PlausibleRange.of("residual", Kind.PRESSURE));
        Optional<Double> price = numbers.required(keys, "price", "price of the booster" + of, "4000");
        double upkeep = numbers.optional(keys, "upkeep_per_year", "upkeep of the booster" + of, "200")
                .orElse(0.0);
        double fill = numbers.optional(keys, "boosted_fill", "price of a boosted fill" + of, "1.5")
                .orElse(0.0);
        keys.reportStrangers();
        return inlet.isEmpty() || price.isEmpty()
                ? null
                : new Booster(inlet.get().value(), price.get(), upkeep, fill);
    }
}
