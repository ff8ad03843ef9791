package org.lowfirst.app.honest;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.lowfirst.app.words.Wording;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.contents.ContentsAssumptions;
import org.lowfirst.planning.contents.FillSpread;
import org.lowfirst.planning.contents.FillSpread.CountedFill;
import org.lowfirst.planning.contents.FillSpread.Spread;
import org.lowfirst.planning.contents.FillSpreads;
import org.lowfirst.planning.contents.FillUncertainty;
import org.lowfirst.planning.contents.FillUncertainty.Known;
import org.lowfirst.planning.contents.Gauge;
import org.lowfirst.planning.contents.MeteredCylinder.VolumeOrigin;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.GaugeUse;
import org.lowfirst.station.Settings;
import org.lowfirst.station.Supply;

/** Says how far the gauges may end from what a plan expects. Records nothing. */
public final class SpreadingAPlan {

    private static final double PER_CENT = 100.0;

    private final BenchSource source;
    private final JudgingReadings judging;
    private final Wording wording;

    public SpreadingAPlan(BenchSource source, JudgingReadings judging, Locale locale) {
        this.source = source;
        this.judging = judging;
        this.wording = Wording.of(SpreadingAPlan.class, locale);
    }

    /**
     * @param plan a plan made for this bench as it stands
     * @param temperatureAssumed whether nobody read a thermometer
     * @throws java.util.NoSuchElementException when there is no such bench
     */
    public SpreadPlan spread(BenchId id, FillPlan plan, boolean temperatureAssumed) {
        Bench bench = source.getStanding(id).bench();
        ReadingHistory history = judging.history(id);
        ContentsAssumptions assumptions = ContentsAssumptions.standard();
        double deviation_K = temperatureAssumed
                ? assumptions.temperatures().assumed_K()
                : assumptions.temperatures().measured_K();
        FillSpread spread = FillSpreads.under(conditions(bench.settings(), plan), deviation_K, assumptions)
                .spread(plan, known(bench, history, plan, deviation_K));
        ShownUnits units = BenchUnits.shown(bench.settings());
        return new SpreadPlan(
                spread,
                spread.stages().stream()
                        .map(stage -> words(stage.bottle(), units))
                        .toList(),
                words(spread.reach(), units),
                fillsLeft(spread, units),
                history.notes());
    }

    private Conditions conditions(Settings settings, FillPlan plan) {
        return new Conditions(
                source.gas(),
                plan.stop().bench(),
                plan.stop().reference(),
                settings.surroundings().ambient().absolute(),
                settings.surroundings().hoseVolume().volume());
    }

    private static FillUncertainty known(
            Bench bench, ReadingHistory history, FillPlan plan, double temperatureDeviation_K) {
        Gauge onSupplies = gauge(bench, history, GaugeUse.SUPPLIES, plan);
        Gauge onBottles = gauge(bench, history, GaugeUse.BOTTLES, plan);
        Map<String, Known> supplies = new LinkedHashMap<>();
        for (Supply supply : bench.bank()) {
            VolumeOrigin origin =
                    Reconciled.origin(supply.details().waterVolume().basis());
            supplies.put(supply.details().name(), new Known(onSupplies, origin));
        }
        String name = plan.request().bottle().name();
        VolumeOrigin bottle = bench.listBottles().stream()
                .map(known -> known.details())
                .filter(details -> details.name().equals(name))
                .map(BottleDetails::waterVolume)
                .map(water -> Reconciled.origin(water.basis()))
                .findFirst()
                .orElse(VolumeOrigin.ASSUMED);
        return new FillUncertainty(supplies, new Known(onBottles, bottle), temperatureDeviation_K);
    }

    private static Gauge gauge(Bench bench, ReadingHistory history, GaugeUse use, FillPlan plan) {
        return history.findGauge(use)
                .map(GaugeNow::known)
                .orElseGet(() -> JournalAssumptions.STANDARD.gauge(
                        GaugeShelf.assumedKey(use),
                        bench.settings().units().pressure(),
                        plan.stop().reading()));
    }

    /** "113 bar, within 3"; a stop reading has no spread. */
    private String words(Spread spread, ShownUnits units) {
        PressureUnit unit = units.pressure();
        String expected = units.show(spread.expected());
        double within = spread.within95().to(unit);
        return within <= 0.0
                ? expected
                : wording.text("spread.within", Map.of("expected", expected, "within", rounded(within, units)));
    }

    private static String rounded(double value, ShownUnits units) {
        return units.pressure() == PressureUnit.MEGAPASCAL
                ? units.number(value, 2)
                : units.number(Math.max(1.0, Math.ceil(value)), 0);
    }

    private String fillsLeft(FillSpread spread, ShownUnits units) {
        List<String> sentences = new ArrayList<>();
        sentences.add(spread.plan().fillsLeft().inWords(units));
        CountedFill last = spread.last();
        if (last != null && last.number() > 1) {
            sentences.add(chance("fills.last", last));
        }
        CountedFill next = spread.next();
        if (next != null) {
            sentences.add(chance("fills.next", next));
        }
        return String.join("; ", sentences);
    }

    private String chance(String key, CountedFill fill) {
        return wording.text(
                key,
                Map.of(
                        "number",
                        Integer.toString(fill.number()),
                        "percent",
                        String.format(Locale.ROOT, "%.0f", PER_CENT * fill.chanceReaches())));
    }
}
