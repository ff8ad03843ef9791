package org.lowfirst.gas.internal;

import org.lowfirst.gas.Isotherm;
import org.lowfirst.gas.Temperature;

/**
 * Pressure and density at one temperature straight from the equation. Immutable.
 *
 * <p>Above the critical temperature pressure rises with density everywhere, so the density of a pressure is one number:
 * Newton's method kept inside a shrinking bracket.
 *
 * <p>Symbols: p pressure [Pa, absolute], T temperature [K], rho molar density [mol/m3], R gas constant, delta = rho /
 * rho_reducing, phi = derivative of the residual Helmholtz energy by delta: p = rho R T (1 + delta phi).
 *
 * @see "[SchmidtWagner1985]"
 */
final class DirectIsotherm implements Isotherm {

    private static final int MOST_STEPS = 100;
    /** When a Newton step is shorter than this part of the density, the next would be below rounding. */
    private static final double LAST_STEP = 1e-9;

    private final Temperature temperature;
    private final double highest_Pa;
    private final double limit_molPerM3;
    private final double rT_JPerMol;
    private final double reducing_molPerM3;
    private final double[][] phi;

    DirectIsotherm(HelmholtzEquation equation, Temperature temperature) {
        this.temperature = temperature;
        highest_Pa = equation.range().highestPressure().pascals();
        limit_molPerM3 = equation.constants.highestDensity_molPerM3();
        rT_JPerMol = equation.constants.gasConstant_JPerMolK() * temperature.kelvin();
        reducing_molPerM3 = equation.constants.reducingDensity_molPerM3();
        phi = equation.residual.deltaDerivative(equation.constants.reducingTemperature_K() / temperature.kelvin());
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
        if (!(rho_molPerM3 >= 0.0) || rho_molPerM3 > limit_molPerM3) {
            throw Limits.density(rho_molPerM3, limit_molPerM3);
        }
        return pressure(rho_molPerM3);
    }

    double pressure(double rho) {
        double delta = rho / reducing_molPerM3;
        return rho * rT_JPerMol * (1.0 + delta * phi(delta));
    }

    double phi(double delta) {
        double sum = 0.0;
        for (int l = 0; l < phi.length; l++) {
            if (phi[l].length > 0) {
                double value = Polynomials.value(phi[l], delta);
                sum += l == 0 ? value : value * Math.exp(-Polynomials.power(delta, l));
            }
        }
        return sum;
    }

    private double phiSlope(double delta) {
        double sum = 0.0;
        for (int l = 0; l < phi.length; l++) {
            if (phi[l].length > 0) {
                double slope = Polynomials.slope(phi[l], delta);
                if (l == 0) {
                    sum += slope;
                } else {
                    double below = Polynomials.power(delta, l - 1);
                    sum += Math.exp(-below * delta) * (slope - l * below * Polynomials.value(phi[l], delta));
                }
            }
        }
        return sum;
    }

    private double pressureSlope(double rho) {
        double delta = rho / reducing_molPerM3;
        return rT_JPerMol * (1.0 + 2.0 * delta * phi(delta) + delta * delta * phiSlope(delta));
    }

    @Override
    public double density_molPerM3(double p_Pa) {
        if (!(p_Pa >= 0.0) || p_Pa > highest_Pa) {
            throw Limits.pressure(p_Pa, highest_Pa);
        }
        return density(p_Pa, Math.min(p_Pa / rT_JPerMol, 0.5 * limit_molPerM3));
    }

    double density(double p, double start) {
        double low = 0.0;
        double high = limit_molPerM3;
        double rho = start;
        for (int i = 0; i < MOST_STEPS && low < high; i++) {
            double excess = pressure(rho) - p;
            if (excess > 0.0) {
                high = rho;
            } else {
                low = rho;
            }
            double step = excess / pressureSlope(rho);
            double next = rho - step;
            if (!(next >= low && next <= high)) {
                next = 0.5 * (low + high);
            } else if (Math.abs(step) <= LAST_STEP * rho) {
                return next;
            }
            rho = next;
        }
        return rho;
    }
}
