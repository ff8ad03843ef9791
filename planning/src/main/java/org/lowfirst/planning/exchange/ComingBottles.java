package org.lowfirst.planning.exchange;

import java.util.List;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Isotherm;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.FillPlanner;
import org.lowfirst.planning.study.BottleUse;
import org.lowfirst.planning.study.kernel.Draws;

/** A drawn sequence of bottles as numbers, met by every option alike. Immutable. */
final class ComingBottles {

    private final double[] bottle_m3;
    private final double[] start_molPerM3;
    private final double[] stop_molPerM3;

    ComingBottles(Conditions conditions, List<BottleUse> usual, int count, Draws draws) {
        Isotherm line = conditions.gas().isotherm(conditions.bench()).orElseThrow();
        FillPlanner planner = FillPlanner.under(conditions);
        double ambient_Pa = conditions.ambient().pascals();
        double shares = usual.stream().mapToDouble(BottleUse::share).sum();
        bottle_m3 = new double[count];
        start_molPerM3 = new double[count];
        stop_molPerM3 = new double[count];
        for (int i = 0; i < count; i++) {
            BottleUse use = picked(usual, shares * draws.uniform());
            GaugePressure stop =
                    planner.stop(use.target(), use.servicePressure()).reading();
            double low_Pa = use.startLowest().pascals();
            double start_Pa = low_Pa + (use.startHighest().pascals() - low_Pa) * draws.uniform();
            bottle_m3[i] = use.waterVolume().cubicMetres();
            start_molPerM3[i] = line.density_molPerM3(start_Pa + ambient_Pa);
            stop_molPerM3[i] = line.density_molPerM3(stop.pascals() + ambient_Pa);
        }
    }

    private static BottleUse picked(List<BottleUse> usual, double place) {
        double left = place;
        for (BottleUse use : usual) {
            left -= use.share();
            if (left < 0.0) {
                return use;
            }
        }
        return usual.get(usual.size() - 1);
    }

    int count() {
        return bottle_m3.length;
    }

    double bottle_m3(int i) {
        return bottle_m3[i];
    }

    double start_molPerM3(int i) {
        return start_molPerM3[i];
    }

    double stop_molPerM3(int i) {
        return stop_molPerM3[i];
    }

    /** Whether the bottle is below its stop. */
    boolean needs(int i) {
        return start_molPerM3[i] < stop_molPerM3[i];
    }
}
