package org.lowfirst.transfer.warm;

import org.lowfirst.gas.Mass;

/**
 * One layer of a wall, taken at one temperature.
 *
 * <p>Its energy is {@code m (c (T - T0) + s (T - T0)^2 / 2)} with T0 = 293.15 K.
 *
 * @param mass above 0
 * @param specificHeat_JPerKgK specific heat c at 293.15 K [J/(kg K)], above 0
 * @param specificHeatSlope_JPerKgK2 its rise with temperature s [J/(kg K2)], at least 0
 * @param halfResistance_KPerW resistance to heat from the middle of the layer to either face [K/W], at least 0
 */
public record WallLayer(
        Mass mass, double specificHeat_JPerKgK, double specificHeatSlope_JPerKgK2, double halfResistance_KPerW) {

    /** Temperature at which specific heats are stated [K]. */
    static final double T0_K = 293.15;

    public WallLayer {
        if (!(mass.kilograms() > 0.0) || !(specificHeat_JPerKgK > 0.0)) {
            throw new IllegalArgumentException("The heat capacity of a wall layer (" + mass.kilograms() + " kg, "
                    + specificHeat_JPerKgK + " J/(kg K)) must be above 0.");
        }
        if (!(specificHeatSlope_JPerKgK2 >= 0.0) || !(halfResistance_KPerW >= 0.0)) {
            throw new IllegalArgumentException("The slope (" + specificHeatSlope_JPerKgK2
                    + " J/(kg K2)) and the resistance (" + halfResistance_KPerW + " K/W) must be at least 0.");
        }
    }

    /** A layer of constant specific heat that conducts perfectly. */
    public static WallLayer of(Mass mass, double specificHeat_JPerKgK) {
        return new WallLayer(mass, specificHeat_JPerKgK, 0.0, 0.0);
    }

    /** Energy above that at 293.15 K [J]. */
    double energy_J(double T_K) {
        double t = T_K - T0_K;
        return mass.kilograms() * (specificHeat_JPerKgK + 0.5 * specificHeatSlope_JPerKgK2 * t) * t;
    }

    /** Heat capacity [J/K]. */
    double capacity_JPerK(double T_K) {
        return mass.kilograms() * (specificHeat_JPerKgK + specificHeatSlope_JPerKgK2 * (T_K - T0_K));
    }

    /** Temperature [K] at which the energy is this; the inverse of {@link #energy_J}. */
    double temperature_K(double energy_J) {
        double e = energy_J / mass.kilograms();
        double c = specificHeat_JPerKgK;
        // Root of s t^2 / 2 + c t = e that stays accurate as s goes to 0.
        return T0_K + 2.0 * e / (c + Math.sqrt(c * c + 2.0 * specificHeatSlope_JPerKgK2 * e));
    }
}
