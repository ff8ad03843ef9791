package org.lowfirst.planning.study;

import java.util.ArrayList;
import java.util.List;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Isotherm;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.FillPlanner;

/** The temperatures a bench sees, in bands of at most one kelvin, each with its isotherm. Immutable. */
final class Bands {

    private static final double WIDEST_K = 1.0;
    /** Days farther from the wave than this many standard deviations do not happen. */
    static final double CUT = 3.0;

    private final double lowest_K;
    private final double width_K;
    private final List<Isotherm> isotherms = new ArrayList<>();
    private final List<FillPlanner> planners = new ArrayList<>();
    private final double ambient_Pa;

    Bands(Site site) {
        BenchTemperature temperature = site.temperature();
        double reach_K = reach_K(temperature);
        int count = Math.max(1, (int) Math.ceil(2.0 * reach_K / WIDEST_K));
        lowest_K = temperature.mean().kelvin() - reach_K;
        width_K = 2.0 * reach_K / count;
        ambient_Pa = site.ambient().pascals();
        for (int band = 0; band < count; band++) {
            Temperature middle = new Temperature(lowest_K + width_K * (band + 0.5));
            isotherms.add(site.gas().isotherm(middle).orElseThrow());
            planners.add(FillPlanner.under(
                    new Conditions(site.gas(), middle, site.reference(), site.ambient(), site.hose())));
        }
    }

    /** How far the bench may be from its mean [K]. */
    static double reach_K(BenchTemperature temperature) {
        return temperature.swing_K() + CUT * temperature.dailySpread_K();
    }

    int count() {
        return isotherms.size();
    }

    int of(double T_K) {
        return width_K == 0.0 ? 0 : (int) Math.max(0.0, Math.min(count() - 1.0, (T_K - lowest_K) / width_K));
    }

    double density_molPerM3(int band, double gauge_Pa) {
        return isotherms.get(band).density_molPerM3(gauge_Pa + ambient_Pa);
    }

    double reading_Pa(int band, double rho_molPerM3) {
        return isotherms.get(band).pressure_Pa(rho_molPerM3) - ambient_Pa;
    }

    /** Density at which the valve is shut, the cap of a cold day kept [mol/m3]. */
    double stop_molPerM3(int band, BottleUse use) {
        GaugePressure stop =
                planners.get(band).stop(use.target(), use.servicePressure()).reading();
        return density_molPerM3(band, stop.pascals());
    }
}
