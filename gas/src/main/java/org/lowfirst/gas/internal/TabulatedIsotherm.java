package org.lowfirst.gas.internal;

import org.lowfirst.gas.Isotherm;
import org.lowfirst.gas.Temperature;

/**
 * Pressure and density at one temperature from a table made of the equation, for many cheap look-ups. Immutable.
 *
 * <p>The table keeps phi of {@link IsothermCurve} over density. Pressure is read from it, p = rho R T (1 + delta phi);
 * density is found by Newton's method on the same table, from a first guess that a second table keeps over pressure. So the
 * two are inverse to each other to rounding, whatever the table's distance from the equation, and a mass balance over
 * readings closes.
 *
 * <p>Accuracy: see docs/validation.md, row planning-table.
 *
 * <p>Symbols: as in {@link IsothermCurve}; phi here by density, not by delta: p = rho R T (1 + rho phi).
 */
final class TabulatedIsotherm implements Isotherm {

    private static final int MOST_STEPS = 50;

    /** When a Newton step is shorter than this part of the density, the next would be below rounding. */
    private static final double LAST_STEP = 1e-8;

    private static final double ROUNDING = 1e-12;

    private final Temperature temperature;
    private final double highest_Pa;
    private final double rT_JPerMol;
    private final double highest_molPerM3;
    private final PiecewisePolynomial phi;
    /** 1 / Z over pressure. */
    private final PiecewisePolynomial guess;

    TabulatedIsotherm(DirectIsotherm direct, double reducing_molPerM3) {
        temperature = direct.temperature();
        highest_Pa = direct.highestPressure_Pa();
        rT_JPerMol = direct.rT_JPerMol();
        highest_molPerM3 = direct.density_molPerM3(highest_Pa);
        IsothermCurve curve = direct.curve();
        phi = new PiecewisePolynomial(
                rho -> curve.phi(rho / reducing_molPerM3) / reducing_molPerM3, highest_molPerM3 * (1.0 + ROUNDING));
        double[] last = {1.0};
        guess = new PiecewisePolynomial(
                p -> {
                    if (p > 0.0) {
                        double ideal = p / rT_JPerMol;
                        last[0] = density(p, Math.min(highest_molPerM3, ideal * last[0])) / ideal;
                    }
                    return last[0];
                },
                highest_Pa);
    }

    @Override
    public Temperature temperature() {
        return temperature;
    }

    @Override
    public double highestPressure_Pa() {
        return highest_Pa;
    }

    @Override
    public double pressure_Pa(double rho_molPerM3) {
        if (!(rho_molPerM3 >= 0.0) || rho_molPerM3 > phi.top()) {
            throw Limits.density(rho_molPerM3, highest_molPerM3);
        }
        return rho_molPerM3 * rT_JPerMol * (1.0 + rho_molPerM3 * phi.value(rho_molPerM3));
    }

    @Override
    public double density_molPerM3(double p_Pa) {
        if (!(p_Pa >= 0.0) || p_Pa > highest_Pa) {
            throw Limits.pressure(p_Pa, highest_Pa);
        }
        return density(p_Pa, Math.min(p_Pa / rT_JPerMol * guess.value(p_Pa), phi.top()));
    }

    private double density(double p, double start) {
        double target = p / rT_JPerMol;
        double low = 0.0;
        double high = phi.top();
        double rho = start;
        for (int i = 0; i < MOST_STEPS; i++) {
            double step = phi.newtonStep(rho, target);
            double next = rho - step;
            if (Math.abs(step) <= LAST_STEP * rho && next <= high) {
                return next;
            }
            if (step > 0.0) {
                high = rho;
            } else {
                low = rho;
            }
            rho = next >= low && next <= high ? next : 0.5 * (low + high);
        }
        throw new AssertionError("The bracket [" + low + ", " + high + "] mol/m3 did not close for " + p + " Pa.");
    }
}
