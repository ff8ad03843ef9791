package org.lowfirst.transfer;

import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.Density;
import org.lowfirst.gas.Isotherm;
import org.lowfirst.gas.Volume;

/**
 * The hose and manifold between the supply valves and the transfer valve, and the gas in them.
 *
 * <p>The hose lies on the supply side of the transfer valve. So while a supply is open the hose has the supply's pressure;
 * between two stages, with every supply valve and the transfer valve shut, it keeps the pressure of the supply just shut; and
 * when a bottle is taken off, its gas above the surroundings' pressure goes to the surroundings ({@link #vent}). The short
 * piece between transfer valve and bottle valve counts as nothing.
 *
 * @param volume inner volume, 0 for a hose that is left out of account
 * @param contents gas inside, at least 0
 */
public record Hose(Volume volume, Amount contents) {

    /** A hose left out of account: no volume, no gas. */
    public static final Hose NONE = new Hose(new Volume(0.0), Amount.NONE);

    public Hose {
        if (volume.cubicMetres() == 0.0 && contents.moles() > 0.0) {
            throw new IllegalArgumentException(
                    "The contents (" + contents.moles() + " mol) of a hose without volume must be 0.");
        }
    }

    /**
     * The hose as the next bottle finds it: purged, holding the same gas at the pressure of the surroundings.
     *
     * @throws IllegalArgumentException when the pressure is above {@link Isotherm#highestPressure_Pa()}
     */
    public static Hose purged(Volume volume, AbsolutePressure ambient, Isotherm isotherm) {
        return new Hose(volume, new Amount(isotherm.density_molPerM3(ambient.pascals()) * volume.cubicMetres()));
    }

    /**
     * Opens the hose to the surroundings.
     *
     * @param ambient molar density of the gas at the pressure of the surroundings
     * @return the hose afterwards and what it lost; a hose below the surroundings' pressure loses nothing
     */
    public Vented vent(Density ambient) {
        double kept_mol = Math.min(contents.moles(), ambient.amountIn(volume).moles());
        return new Vented(new Hose(volume, new Amount(kept_mol)), new Amount(contents.moles() - kept_mol));
    }

    /** A vented hose and the amount that went to the surroundings. */
    public record Vented(Hose hose, Amount lost) {}
}
