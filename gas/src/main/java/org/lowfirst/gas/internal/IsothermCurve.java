package org.lowfirst.gas.internal;

/**
 * Pressure against density at one temperature, from the equation. The owner sets the temperature; while it is not set anew,
 * reading is safe from any thread.
 *
 * <p>Above the critical temperature pressure rises with density everywhere, so the density of a pressure is one number:
 * Newton's method kept inside a shrinking bracket.
 *
 * <p>Symbols: p pressure [Pa, absolute], T temperature [K], rho molar density [mol/m3], R gas constant, delta = rho /
 * rho_reducing, phi = derivative of the residual Helmholtz energy by delta: p = rho R T (1 + delta phi).
 *
 * @see "[SchmidtWagner1985]"
 */
final class IsothermCurve {

    private static final int MOST_STEPS = 200;

    /** When a Newton step is shorter than this part of the density, the next would be below rounding. */
    private static final double LAST_STEP = 1e-9;

    private final EquationConstants constants;
    private final ResidualTerms residual;
    /** For each l the polynomial beside exp(-delta^l), lowest power first; empty where no term has this l. */
    private final double[][] phi;

    private final double[] powers;
    private double rT_JPerMol;

    IsothermCurve(EquationConstants constants, ResidualTerms residual) {
        this.constants = constants;
        this.residual = residual;
        phi = residual.emptyDeltaDerivative();
        powers = new double[residual.tauPowers.size()];
    }

    void setTemperature(double T_K) {
        rT_JPerMol = constants.gasConstant_JPerMolK() * T_K;
        residual.tauPowers.fill(constants.reducingTemperature_K() / T_K, powers);
        residual.deltaDerivative(powers, phi);
    }

    double pressure(double rho) {
        double delta = rho / constants.reducingDensity_molPerM3();
        return rho * rT_JPerMol * (1.0 + delta * phi(delta));
    }

    /** (dp/drho)_T [Pa m3/mol]. */
    double pressureSlope(double rho) {
        double delta = rho / constants.reducingDensity_molPerM3();
        return rT_JPerMol * (1.0 + delta * (2.0 * phi(delta) + delta * phiSlope(delta)));
    }

    double phi(double delta) {
        double sum = 0.0;
        for (int l = 0; l < phi.length; l++) {
            double[] c = phi[l];
            if (c.length > 0) {
                double value = 0.0;
                for (int k = c.length - 1; k >= 0; k--) {
                    value = value * delta + c[k];
                }
                sum += l == 0 ? value : value * Math.exp(-power(delta, l));
            }
        }
        return sum;
    }

    double phiSlope(double delta) {
        double sum = 0.0;
        for (int l = 0; l < phi.length; l++) {
            double[] c = phi[l];
            if (c.length > 0) {
                double value = 0.0;
                double slope = 0.0;
                for (int k = c.length - 1; k >= 0; k--) {
                    slope = slope * delta + value;
                    value = value * delta + c[k];
                }
                if (l == 0) {
                    sum += slope;
                } else {
                    double below = power(delta, l - 1);
                    sum += Math.exp(-below * delta) * (slope - l * below * value);
                }
            }
        }
        return sum;
    }

    /** The density of a pressure; {@code start} is the first guess, best not far above the answer. */
    double density(double p, double start) {
        double target = p / rT_JPerMol / constants.reducingDensity_molPerM3();
        double low = 0.0;
        double high = constants.highestDensity_molPerM3() / constants.reducingDensity_molPerM3();
        double delta = Math.min(start / constants.reducingDensity_molPerM3(), high);
        for (int i = 0; i < MOST_STEPS; i++) {
            double step = newtonStep(delta, target);
            if (step > 0.0) {
                high = delta;
            } else {
                low = delta;
            }
            double next = delta - step;
            if (!(next >= low && next <= high)) {
                next = 0.5 * (low + high);
            } else if (Math.abs(step) <= LAST_STEP * delta) {
                return next * constants.reducingDensity_molPerM3();
            }
            delta = next;
        }
        throw new AssertionError("The bracket [" + low + ", " + high + "] did not close for " + p + " Pa.");
    }

    /** (delta (1 + delta phi) - target) by its slope, which is positive above the critical temperature. */
    private double newtonStep(double delta, double target) {
        double sum = 0.0;
        double sumSlope = 0.0;
        for (int l = 0; l < phi.length; l++) {
            double[] c = phi[l];
            if (c.length > 0) {
                double value = 0.0;
                double slope = 0.0;
                for (int k = c.length - 1; k >= 0; k--) {
                    slope = slope * delta + value;
                    value = value * delta + c[k];
                }
                if (l == 0) {
                    sum += value;
                    sumSlope += slope;
                } else {
                    double below = power(delta, l - 1);
                    double damping = Math.exp(-below * delta);
                    sum += damping * value;
                    sumSlope += damping * (slope - l * below * value);
                }
            }
        }
        double deltaPhi = delta * sum;
        return (delta * (1.0 + deltaPhi) - target) / (1.0 + 2.0 * deltaPhi + delta * delta * sumSlope);
    }

    private static double power(double x, int exponent) {
        double product = 1.0;
        for (int k = 0; k < exponent; k++) {
            product *= x;
        }
        return product;
    }
}
