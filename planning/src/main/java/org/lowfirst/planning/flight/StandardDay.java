package org.lowfirst.planning.flight;

import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.Temperature;

/**
 * Pressure and temperature of the ICAO standard atmosphere, 0 to 20 km.
 *
 * <p>Hydrostatic equation with a lapse of 6.5 K/km to 11 km and a constant temperature above it.
 *
 * @see "[ICAO7488] ICAO Doc 7488, Manual of the ICAO Standard Atmosphere, layers 1 and 2 (constants from memory; checked
 *     against tabulated pressures in StandardDayReferenceTest)"
 */
public final class StandardDay {

    private static final double SEA_LEVEL_P_PA = 101_325.0;
    private static final double SEA_LEVEL_T_K = 288.15;
    private static final double LAPSE_K_PER_M = -0.0065;
    private static final double TROPOPAUSE_M = 11_000.0;
    private static final double GRAVITY_M_PER_S2 = 9.80665;
    private static final double AIR_CONSTANT_J_PER_KG_K = 287.05287;

    private StandardDay() {}

    /**
     * @param altitude pressure altitude, -2 km to 20 km
     */
    public static Temperature temperature(Altitude altitude) {
        return new Temperature(temperature_K(altitude.metres()));
    }

    /**
     * @param altitude pressure altitude, -2 km to 20 km
     */
    public static AbsolutePressure pressure(Altitude altitude) {
        double exponent = -GRAVITY_M_PER_S2 / (AIR_CONSTANT_J_PER_KG_K * LAPSE_K_PER_M);
        double h_m = altitude.metres();
        double lower_m = Math.min(h_m, TROPOPAUSE_M);
        double p_Pa = SEA_LEVEL_P_PA * Math.pow(temperature_K(lower_m) / SEA_LEVEL_T_K, exponent);
        if (h_m > TROPOPAUSE_M) {
            p_Pa *= Math.exp(
                    -GRAVITY_M_PER_S2 * (h_m - TROPOPAUSE_M) / (AIR_CONSTANT_J_PER_KG_K * temperature_K(TROPOPAUSE_M)));
        }
        return new AbsolutePressure(p_Pa);
    }

    /**
     * The pressure altitude at which the standard day has this pressure.
     *
     * @param pressure above 0; below 5.5 kPa the altitude is beyond 20 km, where the layer above is not modelled
     */
    public static Altitude altitude(AbsolutePressure pressure) {
        double exponent = -GRAVITY_M_PER_S2 / (AIR_CONSTANT_J_PER_KG_K * LAPSE_K_PER_M);
        double tropopause_Pa = pressure(new Altitude(TROPOPAUSE_M)).pascals();
        if (pressure.pascals() >= tropopause_Pa) {
            double share = Math.pow(pressure.pascals() / SEA_LEVEL_P_PA, 1.0 / exponent);
            return new Altitude((share - 1.0) * SEA_LEVEL_T_K / LAPSE_K_PER_M);
        }
        double scale_m = AIR_CONSTANT_J_PER_KG_K * temperature_K(TROPOPAUSE_M) / GRAVITY_M_PER_S2;
        return new Altitude(TROPOPAUSE_M - scale_m * Math.log(pressure.pascals() / tropopause_Pa));
    }

    private static double temperature_K(double h_m) {
        return SEA_LEVEL_T_K + LAPSE_K_PER_M * Math.min(h_m, TROPOPAUSE_M);
    }
}
