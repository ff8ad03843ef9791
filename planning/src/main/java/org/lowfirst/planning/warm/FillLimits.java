package org.lowfirst.planning.warm;

import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.Density;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.transfer.warm.Stop;

/**
 * How much gas a bottle may get and what its gauge may show on the way.
 *
 * <p>Settled, it never reads more than the rule book permits at the reference temperature, which is the service pressure unless
 * the book says otherwise; without compensation its gauge never shows more than that at all, warm or settled; hot, it never comes
 * to more than the rule set allows, of which a book that was asked has taken account.
 *
 * @param rated density at which it is full by its marking and the book
 * @param most density it may get
 * @param why what decides that density
 * @param byGauge what decides a stop at {@code gauge}
 * @param gauge what its gauge may show while it is filled
 */
record FillLimits(Density rated, Density most, StopReason why, StopReason byGauge, GaugePressure gauge) {

    /** What keeps a limit from being passed by rounding. */
    private static final double ROUNDING = 1e-12;

    static FillLimits of(
            RatedBottle bottle, WarmBench bench, Compensation compensation, @Nullable GaugePressure target) {
        GaugePressure service = bottle.most();
        Density rated =
                OtherTemperatures.rated(bench.gas(), service, bench.rule().temperature(), bench.ambient());
        Density most = rated;
        boolean otherwise = bottle.isMarkedOtherwise();
        StopReason why = otherwise ? StopReason.RULE_BOOK : StopReason.FULL;
        StopReason byGauge = otherwise ? StopReason.RULE_BOOK_READING : StopReason.SERVICE_PRESSURE;
        boolean on = compensation instanceof Compensation.On;
        if (!on) {
            Density marked = at(bench, service, bench.temperature());
            if (marked.compareTo(most) < 0) {
                most = marked;
                why = byGauge;
            }
        }
        if (bottle.permitted() == null) {
            Density developed =
                    at(bench, DevelopedPressure.limit(bench.rule(), service), DevelopedPressure.at(bench.rule()));
            if (developed.compareTo(most) < 0) {
                most = developed;
                why = StopReason.DEVELOPED_PRESSURE;
            }
        }
        if (target != null) {
            Density wanted = at(bench, target, bench.temperature());
            if (wanted.compareTo(most) < 0) {
                most = wanted;
                why = StopReason.TARGET;
            }
        }
        GaugePressure highest = new GaugePressure(Assumptions.pascals("highest-reading"));
        Density rounded = new Density(most.molesPerCubicMetre() * (1.0 - ROUNDING));
        return new FillLimits(rated, rounded, why, byGauge, on ? highest : service);
    }

    private static Density at(WarmBench bench, GaugePressure reading, Temperature temperature) {
        return bench.gas()
                .density(reading.toAbsolute(bench.ambient()), temperature)
                .orElseThrow();
    }

    Stop stop() {
        return new Stop(gauge, most);
    }

    /** What the gauge shows at the stop when the gas then has a temperature. */
    GaugePressure reading(WarmBench bench, Temperature gas) {
        GaugePressure full = bench.gas().pressure(most, gas).orElseThrow().toGauge(bench.ambient());
        return full.compareTo(gauge) < 0 ? full : gauge;
    }

    /** What decides the stop when the gas then has a temperature. */
    StopReason reason(WarmBench bench, Temperature gas) {
        GaugePressure full = bench.gas().pressure(most, gas).orElseThrow().toGauge(bench.ambient());
        return full.compareTo(gauge) <= 0 ? why : byGauge;
    }

    double percent(Density density) {
        return 100.0 * density.molesPerCubicMetre() / rated.molesPerCubicMetre();
    }
}
