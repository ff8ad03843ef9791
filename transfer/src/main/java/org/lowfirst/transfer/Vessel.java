package org.lowfirst.transfer;

import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.Density;
import org.lowfirst.gas.Isotherm;
import org.lowfirst.gas.Volume;

/**
 * A supply or a bottle: a rigid volume and the gas in it.
 *
 * @param waterVolume internal volume, above 0
 * @param contents gas inside, at least 0
 */
public record Vessel(Volume waterVolume, Amount contents) {

    public Vessel {
        if (!(waterVolume.cubicMetres() > 0.0)) {
            throw new IllegalArgumentException(
                    "The water volume (" + waterVolume.cubicMetres() + " m3) of a vessel must be above 0.");
        }
    }

    /**
     * The vessel that holds gas at this pressure and the temperature of the isotherm.
     *
     * @throws IllegalArgumentException when the pressure is above {@link Isotherm#highestPressure_Pa()}
     */
    public static Vessel at(Volume waterVolume, AbsolutePressure pressure, Isotherm isotherm) {
        double rho_molPerM3 = isotherm.density_molPerM3(pressure.pascals());
        return new Vessel(waterVolume, new Amount(rho_molPerM3 * waterVolume.cubicMetres()));
    }

    /** Molar density of the gas inside [mol/m3]. */
    public Density density() {
        return new Density(contents.moles() / waterVolume.cubicMetres());
    }

    /**
     * Absolute pressure of the gas inside once it has the temperature of the isotherm.
     *
     * @throws IllegalArgumentException when it would be above {@link Isotherm#highestPressure_Pa()}
     */
    public AbsolutePressure pressure(Isotherm isotherm) {
        return new AbsolutePressure(isotherm.pressure_Pa(density().molesPerCubicMetre()));
    }
}
