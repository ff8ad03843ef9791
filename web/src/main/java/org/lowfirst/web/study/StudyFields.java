package org.lowfirst.web.study;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.outlook.BenchToday;
import org.lowfirst.app.outlook.PastUse;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.study.Alternative;
import org.lowfirst.planning.study.BenchTemperature;
import org.lowfirst.planning.study.Booster;
import org.lowfirst.planning.study.Demand;
import org.lowfirst.planning.study.ExchangeHabit;
import org.lowfirst.planning.study.Extent;
import org.lowfirst.planning.study.Prices;
import org.lowfirst.planning.study.Site;
import org.lowfirst.planning.study.StudyRequest;
import org.lowfirst.planning.study.SupplyKind;
import org.lowfirst.station.AheadFigure;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.Supply;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.kept.Defaults;
import org.lowfirst.web.words.Words;
import org.lowfirst.web.workplace.BenchNow;

/** The fields of the study form. Defaults of use and temperature: common practice, no source. */
final class StudyFields {

    private static final List<Double> BUSY_SUMMER = List.of(1.0, 1.0, 1.0, 2.0, 4.0, 4.0, 4.0, 4.0, 3.0, 2.0, 1.0, 1.0);
    private static final String USUAL_FILLS = "100";
    private static final double SWING_K = 8.0;
    private static final double DAILY_K = 3.0;
    private static final double YEAR_SPREAD = 0.15;
    private static final int WARMEST_DAY = 200;
    private static final int WARM_UP_YEARS = 1;
    private static final long SEED = 1;

    /** Which field of the form the planner means. */
    static final Map<String, String> OBJECTIONS = Map.ofEntries(
            Map.entry("price of a delivery", "delivery"),
            Map.entry("days from sending for supplies to their arrival", "lead"),
            Map.entry("price of a missed fill", "missed"),
            Map.entry("price of an interconnect", "interconnect"),
            Map.entry("years to pay off lines and booster", "years"),
            Map.entry("fills a year", "fills"),
            Map.entry("number of years", "years"),
            Map.entry("number of runs", "runs"),
            Map.entry("number of alternatives", "to"),
            Map.entry("bank size", "to"),
            Map.entry("number of supplies in a delivery", "from"),
            Map.entry("water volume of the supplies", "volume"),
            Map.entry("least delivered reading", "full"),
            Map.entry("highest delivered reading", "full"),
            Map.entry("price of a supply", "content"),
            Map.entry("rent for a day", "rent"),
            Map.entry("residual", "residual"),
            Map.entry("inlet", "inlet"),
            Map.entry("price of the booster", "booster"),
            Map.entry("price of a boosted fill", "boosted"));

    /** Which field holds which figure of the bench. */
    static final Map<String, AheadFigure> FIGURES = new TreeMap<>(Map.of(
            "content", AheadFigure.CONTENT_PRICE,
            "delivery", AheadFigure.DELIVERY_PRICE,
            "rent", AheadFigure.RENT_PER_DAY,
            "missed", AheadFigure.MISSED_FILL_PRICE,
            "interconnect", AheadFigure.INTERCONNECT_PRICE,
            "lead", AheadFigure.LEAD_DAYS));

    private final Reader reader;
    private final Words words;

    StudyFields(Reader reader, BenchNow now) {
        this.reader = reader;
        this.words = now.words();
    }

    /** What a bench begins with. */
    static Map<String, String> filled(BenchNow now, PastUse past, Map<String, String> typed, Defaults defaults) {
        Map<String, String> fields = new HashMap<>(typed);
        if (!typed.containsKey("from")) {
            fields.put("habit-one", "yes");
        }
        if (past.tells()) {
            fields.putIfAbsent("fills", Long.toString(Math.round(past.fillsPerYear())));
        } else {
            defaults.fill(fields, "fills", AheadFigure.FILLS_PER_YEAR, USUAL_FILLS);
        }
        FIGURES.forEach((field, figure) -> defaults.fill(fields, field, figure, ""));
        fields.putIfAbsent("season", "summer");
        fields.putIfAbsent("from", "1");
        fields.putIfAbsent("to", "6");
        fields.putIfAbsent(
                "volume",
                now.bench().bank().stream()
                        .findFirst()
                        .map(Supply::details)
                        .map(details ->
                                now.figures().asTyped(details.waterVolume().stated()))
                        .orElse("50 L"));
        fields.putIfAbsent("full", now.figures().toType(now.bench().settings().fullSupply()));
        fields.putIfAbsent("lead", "3");
        fields.putIfAbsent("years", "10");
        fields.putIfAbsent("runs", "200");
        return fields;
    }

    /** The study that was asked for, or null with faults in the reader. */
    @Nullable
    StudyRequest read(BenchToday today, PastUse past) {
        int from = whole("from", 1);
        int to = whole("to", 1);
        if (to < from) {
            reader.fault("to", words.of("fault.study.sizes", from, to));
        }
        @Nullable StatedVolume volume = reader.waterVolume("volume");
        @Nullable StatedPressure full = reader.pressure("full");
        if (reader.empty("content")) {
            reader.fault("content", words.of("fault.price.empty"));
        }
        double content = number("content");
        double rent = number("rent");
        Prices prices = new Prices(number("delivery"), number("lead"), number("missed"), number("interconnect"), 10.0);
        double fills = number("fills");
        int years = whole("years", 10);
        int runs = whole("runs", 200);
        @Nullable Booster booster = booster();
        if (past.uses().isEmpty()) {
            reader.fault("form", words.of("fault.no-bottles"));
        }
        @Nullable StatedPressure residual = reader.pressureIfTyped("residual");
        if (residual == null && chosen(StudyHabit.RESIDUAL) && reader.empty("residual")) {
            reader.fault("residual", words.of("fault.study.residual"));
        }
        if (volume == null || full == null || !reader.form().sound()) {
            return null;
        }
        SupplyKind supply = new SupplyKind("supply", volume.volume(), full.gauge(), content, rent);
        List<Alternative> alternatives =
                alternatives(from, to, supply, booster, residual == null ? GaugePressure.ZERO : residual.gauge());
        if (alternatives.isEmpty()) {
            reader.fault("form", words.of("fault.study.habits"));
            return null;
        }
        Conditions conditions = today.conditions();
        return new StudyRequest(
                new Site(
                        conditions.gas(),
                        new BenchTemperature(conditions.bench(), SWING_K, WARMEST_DAY, DAILY_K),
                        conditions.reference(),
                        conditions.ambient(),
                        conditions.hose()),
                new Demand(
                        fills,
                        YEAR_SPREAD,
                        reader.text("season").equals("even") ? Demand.EVERY_MONTH_ALIKE : BUSY_SUMMER,
                        Demand.EVERY_DAY_ALIKE,
                        past.uses()),
                prices,
                alternatives,
                new Extent(years, WARM_UP_YEARS, runs, SEED));
    }

    private List<Alternative> alternatives(
            int from, int to, SupplyKind supply, @Nullable Booster booster, GaugePressure residual) {
        List<Alternative> ways = new ArrayList<>();
        for (StudyHabit habit : StudyHabit.values()) {
            if (habit == StudyHabit.BOOSTER ? booster == null : !chosen(habit)) {
                continue;
            }
            for (int size = Math.max(from, habit.least()); size <= to; size++) {
                ExchangeHabit exchange = switch (habit) {
                    case ONE, BOOSTER -> ExchangeHabit.oneAtATime();
                    case PAIRS -> ExchangeHabit.inPairs();
                    case EARLY -> ExchangeHabit.whenTheTopCannotFinish(1);
                    case RESIDUAL -> ExchangeHabit.atResidual(residual, 1);
                };
                ways.add(new Alternative(
                        habit.nameOf(words, size),
                        size,
                        0,
                        supply,
                        exchange,
                        habit == StudyHabit.BOOSTER ? booster : null));
            }
        }
        return ways;
    }

    private boolean chosen(StudyHabit habit) {
        return "yes".equals(reader.text(habit.field()));
    }

    private @Nullable Booster booster() {
        @Nullable StatedPressure inlet = reader.pressureIfTyped("inlet");
        double price = number("booster");
        double fill = number("boosted");
        if (inlet == null) {
            if (reader.empty("inlet") && (price > 0 || fill > 0)) {
                reader.fault("inlet", words.of("fault.study.inlet"));
            }
            return null;
        }
        return new Booster(new GaugePressure(inlet.gauge().pascals()), price, 0.0, fill);
    }

    /** How the swing of the temperature is told. */
    static String swing(BenchNow now) {
        boolean fahrenheit = now.bench().settings().units().temperature() == TemperatureUnit.FAHRENHEIT;
        return now.figures().number(fahrenheit ? SWING_K * 1.8 : SWING_K, 0) + " "
                + now.figures().temperatureUnit();
    }

    private double number(String field) {
        @Nullable BigDecimal typed = reader.numberIfTyped(field);
        return typed == null ? 0.0 : typed.doubleValue();
    }

    private int whole(String field, int otherwise) {
        @Nullable BigDecimal typed = reader.numberIfTyped(field);
        if (typed == null) {
            return otherwise;
        }
        if (typed.stripTrailingZeros().scale() > 0) {
            reader.fault(field, words.of("fault.whole", reader.text(field)));
        } else if (field.equals("to") && typed.intValue() > StudyHabit.LARGEST) {
            reader.fault(field, words.of("fault.study.large", reader.text(field), StudyHabit.LARGEST));
        }
        return typed.intValue();
    }
}
