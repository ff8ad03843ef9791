package org.lowfirst.app.study;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lowfirst.app.file.Kind;
import org.lowfirst.app.file.ListReader;
import org.lowfirst.app.file.Measure;
import org.lowfirst.app.file.MeasureReader;
import org.lowfirst.app.file.NameReader;
import org.lowfirst.app.file.NumberReader;
import org.lowfirst.app.file.Place;
import org.lowfirst.app.file.PlausibleRange;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.QuestionFile.Shape;
import org.lowfirst.app.file.Section;
import org.lowfirst.app.file.Tree.Mapping;
import org.lowfirst.app.file.TypedUnits;
import org.lowfirst.app.plan.BankReader;
import org.lowfirst.app.plan.UsedBottles;
import org.lowfirst.app.plan.UsedBottles.UseLine;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.QuantityKind;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.study.Alternative;
import org.lowfirst.planning.study.BenchTemperature;
import org.lowfirst.planning.study.Demand;
import org.lowfirst.planning.study.Extent;
import org.lowfirst.planning.study.Prices;
import org.lowfirst.planning.study.Site;
import org.lowfirst.planning.study.StudyRequest;
import org.lowfirst.planning.study.SupplyKind;

/** Reads a study file and collects everything that is wrong with it. */
final class StudyFileReader {

    static final Shape SHAPE = new Shape(
            "the study file",
            List.of(
                    "temperature",
                    "swing",
                    "warmest_day",
                    "daily_spread",
                    "rules",
                    "hose_volume",
                    "fills_per_year",
                    "year_spread",
                    "months",
                    "weekdays",
                    "bottles",
                    "supplies",
                    "delivery",
                    "lead_days",
                    "missed_fill",
                    "interconnect",
                    "write_off_years",
                    "alternatives",
                    "years",
                    "warm_up_years",
                    "runs",
                    "seed"),
            "a study file has one line for each bottle, supply and alternative",
            "examples/study.yaml");

    private static final Kind<Double> DIFFERENCE = Kind.scaled(
            QuantityKind.of("a difference of temperature", "K, C or F", "9 K", "K: k kelvin", "C: c degc", "F: f degf"),
            "9 K or 16 F",
            Map.of("K", 1.0, "C", 1.0, "F", 5.0 / 9.0));
    private static final List<String> SUPPLY_KEYS = List.of(
            "name", "water_volume", "delivered", "delivered_lowest", "delivered_highest", "content", "rent_per_day");
    private static final int MOST_KINDS = 20;

    private final EquationOfState gas;
    private final Problems problems;
    private final NumberReader numbers;

    StudyFileReader(EquationOfState gas, Problems problems) {
        this.gas = gas;
        this.problems = problems;
        this.numbers = new NumberReader(problems);
    }

    /** What the file asks; empty when it cannot be run, and then there is at least one error. */
    Optional<StudyFile> read(Section section) {
        MeasureReader measures = new MeasureReader(section, problems);
        Optional<Measure<Temperature>> mean = measures.required(
                "temperature", "mean bench temperature", PlausibleRange.of("temperature", Kind.TEMPERATURE));
        BenchTemperature temperature = temperature(section, measures, mean);
        Optional<ReferenceRule> rules = new BankReader(gas, "a study", problems).rules(section);
        Volume hose = measures.optional("hose_volume", "hose volume", PlausibleRange.of("hose_volume", Kind.VOLUME))
                .map(Measure::value)
                .orElse(new Volume(0.0));
        List<UseLine> bottles = new UsedBottles("a study", numbers, problems).read(section);
        Optional<Demand> demand = demand(section, bottles);
        Prices prices = prices(section);
        Map<String, SupplyKind> kinds = new LinkedHashMap<>();
        new ListReader("supplies", "supply", "name: large, water_volume: 50 L", MOST_KINDS, "a study", problems)
                .read(section, this::supply)
                .forEach(line -> kinds.put(line.name(), line.kind()));
        List<Alternative> alternatives = new AlternativeReader(kinds, numbers, problems).read(section);
        numbers.note("alternatives", section.placeOfKey("alternatives"));
        numbers.note("bottles", section.placeOfKey("bottles"));
        Extent extent = extent(section);
        section.reportStrangers();
        if (problems.haveErrors() || mean.isEmpty() || rules.isEmpty() || demand.isEmpty()) {
            return Optional.empty();
        }
        Site site = new Site(gas, temperature, rules.get().temperature(), StandardAtmosphere.PRESSURE, hose);
        ShownUnits units = new ShownUnits(
                TypedUnits.pressure(bottles.get(0).unit()),
                TypedUnits.temperature(mean.get().unit()),
                VolumeUnit.LITRE);
        return Optional.of(new StudyFile(
                new StudyRequest(site, demand.get(), prices, alternatives, extent), rules.get(), units, numbers));
    }

    private BenchTemperature temperature(Section section, MeasureReader measures, Optional<Measure<Temperature>> mean) {
        PlausibleRange<Double> range = PlausibleRange.of("swing", DIFFERENCE);
        double swing_K = measures.optional("swing", "swing of the temperature through the year", range)
                .map(Measure::value)
                .orElse(0.0);
        double daily_K = measures.optional("daily_spread", "daily spread of the temperature", range)
                .map(Measure::value)
                .orElse(0.0);
        long warmest = numbers.optionalWhole(section, "warmest_day", "warmest day of the year", "200")
                .orElse(200L);
        mean.ifPresent(typed -> {
            numbers.note("mean bench temperature", typed.place());
            numbers.note("coldest bench temperature", typed.place());
            numbers.note("warmest bench temperature", typed.place());
        });
        numbers.note("swing of the temperature through the year", section.placeOf("swing"));
        numbers.note("daily spread of the temperature", section.placeOf("daily_spread"));
        return new BenchTemperature(
                mean.map(Measure::value).orElse(ReferenceRule.EU.temperature()), swing_K, small(warmest), daily_K);
    }

    private Optional<Demand> demand(Section section, List<UseLine> bottles) {
        Optional<Double> fills = numbers.required(section, "fills_per_year", "fills a year", "150");
        double spread = numbers.optional(section, "year_spread", "spread between years", "0.2")
                .orElse(0.0);
        List<Double> months = numbers.optionalList(
                        section, "months", "month factors", "[1, 1, 2, 4, 5, 5, 5, 5, 4, 2, 1, 1]")
                .orElse(Demand.EVERY_MONTH_ALIKE);
        List<Double> weekdays = numbers.optionalList(section, "weekdays", "weekday factors", "[1, 1, 1, 1, 2, 6, 5]")
                .orElse(Demand.EVERY_DAY_ALIKE);
        return fills.map(number -> new Demand(
                number,
                spread,
                months,
                weekdays,
                bottles.stream().map(UseLine::use).toList()));
    }

    private Prices prices(Section section) {
        return new Prices(
                price(section, "delivery", "price of a delivery", "35", 0.0),
                price(section, "lead_days", "days from sending for supplies to their arrival", "2", 0.0),
                price(section, "missed_fill", "price of a missed fill", "15", 0.0),
                price(section, "interconnect", "price of an interconnect", "80", 0.0),
                price(section, "write_off_years", "years to pay off lines and booster", "8", 10.0));
    }

    private double price(Section section, String key, String what, String example, double otherwise) {
        return numbers.optional(section, key, what, example).orElse(otherwise);
    }

    private Extent extent(Section section) {
        long years =
                numbers.optionalWhole(section, "years", "number of years", "10").orElse(10L);
        long warmUp = numbers.optionalWhole(section, "warm_up_years", "number of warm-up years", "1")
                .orElse(1L);
        long runs =
                numbers.optionalWhole(section, "runs", "number of runs", "1000").orElse(1_000L);
        long seed = numbers.optionalWhole(section, "seed", "seed", "1").orElse(1L);
        return new Extent(small(years), small(warmUp), runs, seed);
    }

    /** Numbers beyond this are refused later; they only must not wrap around. */
    private static int small(long number) {
        return (int) Math.max(-1_000_000_000, Math.min(1_000_000_000, number));
    }

    private record KindLine(String name, Place namePlace, SupplyKind kind) implements ListReader.Named {}

    private Optional<KindLine> supply(Mapping mapping, int number) {
        Section section = new Section(mapping, "a supply", SUPPLY_KEYS, problems);
        Optional<String> name = new NameReader(problems).read(section, "supply", number, "large");
        String of = " of " + NameReader.label("supply", name, number);
        MeasureReader measures = new MeasureReader(section, problems);
        Optional<Measure<Volume>> volume = measures.required(
                "water_volume", "water volume" + of, PlausibleRange.of("supply_water_volume", Kind.VOLUME));
        boolean span = section.find("delivered_lowest").isPresent();
        PlausibleRange<GaugePressure> full = PlausibleRange.of("full_supply", Kind.PRESSURE);
        Optional<Measure<GaugePressure>> low =
                measures.required(span ? "delivered_lowest" : "delivered", "delivered reading" + of, full);
        Optional<Measure<GaugePressure>> high =
                span ? measures.required("delivered_highest", "highest delivered reading" + of, full) : low;
        Optional<Double> content = numbers.required(section, "content", "price" + of, "60");
        double rent =
                numbers.optional(section, "rent_per_day", "rent" + of, "0.25").orElse(0.0);
        section.reportStrangers();
        if (name.isEmpty() || volume.isEmpty() || low.isEmpty() || high.isEmpty() || content.isEmpty()) {
            return Optional.empty();
        }
        SupplyKind kind = new SupplyKind(
                name.get(), volume.get().value(), low.get().value(), high.get().value(), content.get(), rent);
        return Optional.of(new KindLine(name.get(), section.placeOf("name"), kind));
    }
}
