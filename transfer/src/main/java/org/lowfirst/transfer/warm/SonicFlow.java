package org.lowfirst.transfer.warm;

import org.lowfirst.gas.CaloricEquation;
import org.lowfirst.gas.IdealGas;
import org.lowfirst.gas.StatePoint;

/**
 * Loss-free flow of a real gas to the speed of sound, exactly: along the isentrope from the stagnation state to where the kinetic
 * energy {@code h0 - h} is that of the speed of sound. Mutable, one thread.
 *
 * @see "[Thompson1972] on isentropic nozzle flow of real gases (from memory)"
 */
final class SonicFlow {

    private static final int MOST_STEPS = 100;
    private static final double LAST_STEP = 1e-11;
    private static final double BRACKET_STEP = 0.05;

    private final StatePoint point;
    private final double molarMass_kgPerMol;
    private double stagnation_molPerM3;

    SonicFlow(CaloricEquation equation) {
        point = equation.newPoint();
        molarMass_kgPerMol = equation.molarMass_kgPerMol();
    }

    /**
     * The throat.
     *
     * @param flux_kgPerM2S mass flow for each area of the throat [kg/(m2 s)]
     * @param p_Pa pressure there [Pa]
     * @param T_K temperature there [K]
     */
    record Throat(double flux_kgPerM2S, double p_Pa, double T_K) {}

    /** The throat for gas that comes to it from rest at this pressure and temperature. */
    Throat throat(double p0_Pa, double T0_K) {
        require(point.moveToPressure(p0_Pa, T0_K), p0_Pa, T0_K);
        double rho0 = point.rho_molPerM3();
        stagnation_molPerM3 = rho0;
        double h0 = point.h_JPerMol();
        double s0 = point.s_JPerMolK();
        // f(rho) = 2 (h0 - h) - M w^2 falls as rho rises: a bracket by steps down, then the Illinois method.
        double high = rho0;
        double fHigh = excess(rho0, s0, h0, T0_K);
        double low = rho0;
        double fLow = fHigh;
        while (fLow <= 0.0) {
            high = low;
            fHigh = fLow;
            low -= BRACKET_STEP * rho0;
            fLow = excess(low, s0, h0, point.T_K());
        }
        for (int i = 0; i < MOST_STEPS && high - low > LAST_STEP * high; i++) {
            double mid = (low * fHigh - high * fLow) / (fHigh - fLow);
            double f = excess(mid, s0, h0, point.T_K());
            if (f > 0.0) {
                low = mid;
                fLow = f;
                fHigh *= 0.5;
            } else {
                high = mid;
                fHigh = f;
                fLow *= 0.5;
            }
            if (Math.abs(f) <= LAST_STEP * h0Scale(T0_K)) {
                break;
            }
        }
        double flux = point.rho_molPerM3() * molarMass_kgPerMol * point.soundSpeed_mPerS();
        return new Throat(flux, point.p_Pa(), point.T_K());
    }

    /** Density at rest of the throat computed last [kg/m3]. */
    double stagnationDensity_kgPerM3() {
        return stagnation_molPerM3 * molarMass_kgPerMol;
    }

    private static double h0Scale(double T0_K) {
        return IdealGas.MOLAR_GAS_CONSTANT_J_PER_MOL_K * T0_K;
    }

    private double excess(double rho_molPerM3, double s0, double h0, double guess_K) {
        require(point.moveToEntropy(rho_molPerM3, s0, guess_K), rho_molPerM3, guess_K);
        double w = point.soundSpeed_mPerS();
        return 2.0 * (h0 - point.h_JPerMol()) - molarMass_kgPerMol * w * w;
    }

    private static void require(boolean moved, double first, double T_K) {
        if (!moved) {
            throw new LeftRange("nozzle flow at " + first + " and " + T_K + " K");
        }
    }
}
