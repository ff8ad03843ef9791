package org.lowfirst.planning.contents;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lowfirst.planning.contents.FillUncertainty.Known;

/** The independent errors behind the inputs of a plan, each to be moved by its own standard deviation. */
final class FillErrors {

    private FillErrors() {}

    /**
     * One uncertain input of a fill.
     *
     * @param rectangular whether its error is equally likely anywhere within a limit; normal otherwise
     * @param shift moves it
     */
    record Movement(boolean rectangular, Shift shift) {}

    /** Moves one input of a fill. */
    interface Shift {
        /**
         * @param deviations how far, in standard deviations
         */
        void apply(PerturbedFill fill, double deviations);
    }

    static List<Movement> of(FillUncertainty known, ContentsAssumptions assumptions) {
        List<Movement> all = new ArrayList<>();
        gauges(known).values().forEach(gauge -> {
            double lasting_Pa = gauge.lasting_Pa();
            all.add(new Movement(gauge.isRectangular(), (fill, by) -> shift(fill, known, gauge, by * lasting_Pa)));
        });
        known.supplies().forEach((name, supply) -> {
            double scatter_Pa = supply.gauge().repeat_Pa(assumptions.gauges());
            double share = assumptions.volumes().share(supply.volume());
            all.add(new Movement(false, (fill, by) -> fill.supplyReading(name, by * scatter_Pa)));
            all.add(new Movement(false, (fill, by) -> fill.supplyVolume(name, by * share)));
        });
        Known bottle = known.bottle();
        double scatter_Pa = bottle.gauge().repeat_Pa(assumptions.gauges());
        double share = assumptions.volumes().share(bottle.volume());
        all.add(new Movement(false, (fill, by) -> fill.bottleReading(by * scatter_Pa)));
        all.add(new Movement(false, (fill, by) -> fill.bottleVolume(by * share)));
        return all;
    }

    /** Applies what has been learned about the gauges. */
    static void applyLearned(PerturbedFill fill, FillUncertainty known) {
        gauges(known).values().forEach(gauge -> shift(fill, known, gauge, gauge.expectedOffset_Pa()));
    }

    private static Map<String, Gauge> gauges(FillUncertainty known) {
        Map<String, Gauge> gauges = new LinkedHashMap<>();
        known.supplies().values().forEach(k -> gauges.put(k.gauge().name(), k.gauge()));
        gauges.put(known.bottle().gauge().name(), known.bottle().gauge());
        return gauges;
    }

    /** A lasting error of one gauge, on every cylinder it is read on. */
    private static void shift(PerturbedFill fill, FillUncertainty known, Gauge gauge, double tooHigh_Pa) {
        known.supplies().forEach((name, supply) -> {
            if (supply.gauge().name().equals(gauge.name())) {
                fill.supplyGauge(name, tooHigh_Pa);
            }
        });
        if (known.bottle().gauge().name().equals(gauge.name())) {
            fill.bottleGauge(tooHigh_Pa);
        }
    }
}
