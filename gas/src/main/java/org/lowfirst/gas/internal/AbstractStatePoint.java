package org.lowfirst.gas.internal;

import org.lowfirst.gas.CaloricEquation;
import org.lowfirst.gas.StatePoint;
import org.lowfirst.gas.ValidRange;

/**
 * The moves of a point, for any equation that can be evaluated at a density and a temperature.
 *
 * <p>Internal energy and enthalpy and entropy all rise with temperature, at constant density as at constant pressure, with
 * the slopes cv, cv / T, cp and cp / T; so each has one temperature, found by Newton's method inside a bracket.
 */
abstract class AbstractStatePoint implements StatePoint {

    private static final int MOST_STEPS = 100;

    /**
     * When a Newton step is shorter than this part of the temperature, the next would be about its square: at constant
     * density, where heat capacity changes slowly, and at constant pressure, where it changes fast near the critical point.
     */
    private static final double LAST_STEP_AT_DENSITY = 1e-6;

    private static final double LAST_STEP_AT_PRESSURE = 1e-9;

    private static final double ROUNDING = 1e-12;

    private enum Sought {
        ENERGY(false),
        ENTROPY(false),
        PRESSURE_ENTHALPY(true),
        PRESSURE_ENTROPY(true);

        final boolean keepsPressure;

        Sought(boolean keepsPressure) {
            this.keepsPressure = keepsPressure;
        }
    }

    private final double lowest_K;
    private final double highest_K;
    private final double highest_Pa;
    private final double highest_molPerM3;

    final double gasConstant_JPerMolK;
    private final double molarMass_kgPerMol;

    double rho;
    double t;
    double z;
    double p;
    double u;
    double cv;
    double dpdrho;
    /** (dp/dT)_rho / rho, which stays finite in vacuum. */
    double dpdTPerRho;

    double dudrho;

    AbstractStatePoint(
            ValidRange range, double highest_molPerM3, double gasConstant_JPerMolK, double molarMass_kgPerMol) {
        this.lowest_K = range.lowest().kelvin();
        this.highest_K = range.highest().kelvin();
        this.highest_Pa = range.highestPressure().pascals();
        this.highest_molPerM3 = highest_molPerM3;
        this.gasConstant_JPerMolK = gasConstant_JPerMolK;
        this.molarMass_kgPerMol = molarMass_kgPerMol;
    }

    /** Fills the fields for this state, unchecked. */
    abstract void evaluate(double rho_molPerM3, double T_K);

    /** Entropy where the point is [J/(mol K)]. */
    abstract double entropy();

    /** Density at a pressure and a temperature, unchecked; {@code start} is a first guess. */
    abstract double density(double p_Pa, double T_K, double start);

    @Override
    public final boolean moveTo(double rho_molPerM3, double T_K) {
        if (!(rho_molPerM3 >= 0.0 && rho_molPerM3 <= highest_molPerM3 && T_K >= lowest_K && T_K <= highest_K)) {
            return false;
        }
        double rhoBefore = rho;
        double tBefore = t;
        evaluate(rho_molPerM3, T_K);
        if (p <= highest_Pa) {
            return true;
        }
        evaluate(rhoBefore, tBefore);
        return false;
    }

    @Override
    public final boolean moveToPressure(double p_Pa, double T_K) {
        if (!(p_Pa >= 0.0 && p_Pa <= highest_Pa && T_K >= lowest_K && T_K <= highest_K)) {
            return false;
        }
        evaluate(density(p_Pa, T_K, p_Pa / (gasConstant_JPerMolK * T_K)), T_K);
        return true;
    }

    @Override
    public final boolean moveToEnergy(double rho_molPerM3, double u_JPerMol, double guess_K) {
        return rho_molPerM3 >= 0.0
                && rho_molPerM3 <= highest_molPerM3
                && search(Sought.ENERGY, rho_molPerM3, u_JPerMol, guess_K);
    }

    @Override
    public final boolean moveToEntropy(double rho_molPerM3, double s_JPerMolK, double guess_K) {
        return rho_molPerM3 >= CaloricEquation.LOWEST_DENSITY_MOL_PER_M3
                && rho_molPerM3 <= highest_molPerM3
                && search(Sought.ENTROPY, rho_molPerM3, s_JPerMolK, guess_K);
    }

    @Override
    public final boolean moveToPressureEnthalpy(double p_Pa, double h_JPerMol, double guess_K) {
        return p_Pa >= 0.0 && p_Pa <= highest_Pa && search(Sought.PRESSURE_ENTHALPY, p_Pa, h_JPerMol, guess_K);
    }

    @Override
    public final boolean moveToPressureEntropy(double p_Pa, double s_JPerMolK, double guess_K) {
        return p_Pa > 0.0 && p_Pa <= highest_Pa && search(Sought.PRESSURE_ENTROPY, p_Pa, s_JPerMolK, guess_K);
    }

    /** Finds the temperature; {@code kept} is the density or the pressure that stays as it is. */
    private boolean search(Sought sought, double kept, double target, double guess_K) {
        if (Double.isNaN(target) || Double.isNaN(guess_K)) {
            return false;
        }
        double rhoBefore = rho;
        double tBefore = t;
        // One kelvin outside the range: neither end has been visited yet.
        double lastStep = sought.keepsPressure ? LAST_STEP_AT_PRESSURE : LAST_STEP_AT_DENSITY;
        double low = lowest_K - 1.0;
        double high = highest_K + 1.0;
        double now = within(guess_K);
        double near = kept / (gasConstant_JPerMolK * now);
        for (int i = 0; i < MOST_STEPS && low < highest_K && high > lowest_K; i++) {
            near = sought.keepsPressure ? density(kept, now, near) : kept;
            evaluate(near, now);
            double excess = reading(sought) - target;
            double step = excess / slope(sought);
            double next = now - step;
            if (Math.abs(step) <= lastStep * now && Math.abs(within(next) - next) <= ROUNDING * now) {
                evaluate(sought.keepsPressure ? density(kept, within(next), near) : kept, within(next));
                if (p <= highest_Pa * (1.0 + ROUNDING)) {
                    return true;
                }
                break;
            }
            if (excess > 0.0) {
                high = now;
            } else {
                low = now;
            }
            now = within(next > low && next < high ? next : 0.5 * (low + high));
        }
        evaluate(rhoBefore, tBefore);
        return false;
    }

    private double within(double T_K) {
        return Math.max(lowest_K, Math.min(highest_K, T_K));
    }

    private double reading(Sought sought) {
        return switch (sought) {
            case ENERGY -> u;
            case PRESSURE_ENTHALPY -> h_JPerMol();
            case ENTROPY, PRESSURE_ENTROPY -> entropy();
        };
    }

    private double slope(Sought sought) {
        return switch (sought) {
            case ENERGY -> cv;
            case ENTROPY -> cv / t;
            case PRESSURE_ENTHALPY -> cp_JPerMolK();
            case PRESSURE_ENTROPY -> cp_JPerMolK() / t;
        };
    }

    @Override
    public final double rho_molPerM3() {
        return rho;
    }

    @Override
    public final double T_K() {
        return t;
    }

    @Override
    public final double p_Pa() {
        return p;
    }

    @Override
    public final double u_JPerMol() {
        return u;
    }

    @Override
    public final double h_JPerMol() {
        return u + gasConstant_JPerMolK * t * z;
    }

    @Override
    public final double s_JPerMolK() {
        if (rho < CaloricEquation.LOWEST_DENSITY_MOL_PER_M3) {
            throw new IllegalStateException("The density (" + rho + " mol/m3) must be at least "
                    + CaloricEquation.LOWEST_DENSITY_MOL_PER_M3 + " mol/m3 for an entropy.");
        }
        return entropy();
    }

    @Override
    public final double cv_JPerMolK() {
        return cv;
    }

    @Override
    public final double cp_JPerMolK() {
        return cv + t * dpdTPerRho * dpdTPerRho / dpdrho;
    }

    @Override
    public final double dpdrho_PaM3PerMol() {
        return dpdrho;
    }

    @Override
    public final double dpdT_PaPerK() {
        return rho * dpdTPerRho;
    }

    @Override
    public final double dudrho_JM3PerMol2() {
        return dudrho;
    }

    @Override
    public final double soundSpeed_mPerS() {
        return Math.sqrt(cp_JPerMolK() / cv * dpdrho / molarMass_kgPerMol);
    }

    @Override
    public final double compressibility() {
        return z;
    }
}
