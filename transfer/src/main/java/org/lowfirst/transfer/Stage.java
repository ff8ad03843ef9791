package org.lowfirst.transfer;

import org.lowfirst.gas.Amount;
import org.lowfirst.gas.Density;
import org.lowfirst.gas.Volume;

/**
 * One supply opened to one bottle, everything at one temperature.
 *
 * <p>At one temperature the pressure of a pure gas rises with its density, so "same pressure" and "same density" are one
 * statement, whatever the equation of state. The end of a stage therefore has a closed form and needs no root search:
 *
 * <pre>
 *   equal:  rho = (n_s + n_h + n_b) / (V_s + V_h + V_b)
 *   target: n_b' = rho_stop V_b,  rho_s' = (n_s + n_h + n_b - n_b') / (V_s + V_h)
 * </pre>
 *
 * <p>Symbols: V volume [m3], n amount [mol], rho molar density [mol/m3]; s supply, h hose, b bottle, ' after the stage.
 *
 * <p>Nothing moves from low to high: a supply that, with the hose filled, is not above the bottle is not opened.
 */
public final class Stage {

    private Stage() {}

    /** Opens the supply until the pressures are equal. */
    public static StageResult join(Vessel supply, Hose hose, Vessel bottle) {
        return join(supply, hose, bottle, Double.POSITIVE_INFINITY);
    }

    /**
     * Opens the supply until the pressures are equal or the bottle has come to the stop, whichever is first.
     *
     * @param stop density in the bottle at which the valve is shut
     */
    public static StageResult join(Vessel supply, Hose hose, Vessel bottle, Density stop) {
        return join(supply, hose, bottle, stop.molesPerCubicMetre());
    }

    private static StageResult join(Vessel supply, Hose hose, Vessel bottle, double rhoStop_molPerM3) {
        double vSupply_m3 = supply.waterVolume().cubicMetres();
        double vHose_m3 = hose.volume().cubicMetres();
        double vBottle_m3 = bottle.waterVolume().cubicMetres();
        double bottle_mol = bottle.contents().moles();
        double upstream_mol = supply.contents().moles() + hose.contents().moles();
        double rhoBottle_molPerM3 = bottle_mol / vBottle_m3;
        if (!(upstream_mol / (vSupply_m3 + vHose_m3) > rhoBottle_molPerM3) || rhoBottle_molPerM3 >= rhoStop_molPerM3) {
            return new StageResult(supply, hose, bottle, Amount.NONE, Ending.NOTHING_MOVED);
        }
        double rhoEqual_molPerM3 = equalDensity_molPerM3(upstream_mol, vSupply_m3 + vHose_m3, bottle_mol, vBottle_m3);
        boolean target = rhoEqual_molPerM3 >= rhoStop_molPerM3;
        double after_mol = Math.max(bottle_mol, vBottle_m3 * (target ? rhoStop_molPerM3 : rhoEqual_molPerM3));
        double moved_mol = after_mol - bottle_mol;
        double rhoUpstream_molPerM3 = (upstream_mol - moved_mol) / (vSupply_m3 + vHose_m3);
        return new StageResult(
                holding(supply.waterVolume(), rhoUpstream_molPerM3),
                new Hose(hose.volume(), new Amount(vHose_m3 * rhoUpstream_molPerM3)),
                new Vessel(bottle.waterVolume(), new Amount(after_mol)),
                new Amount(moved_mol),
                target ? Ending.TARGET : Ending.EQUAL);
    }

    /**
     * Density at which gas on the two sides of the transfer valve comes to rest [mol/m3].
     *
     * @param upstream_mol gas in supply and hose [mol]
     * @param upstream_m3 volume of supply and hose [m3]
     * @param bottle_mol gas in the bottle [mol]
     * @param bottle_m3 water volume of the bottle [m3]
     */
    public static double equalDensity_molPerM3(
            double upstream_mol, double upstream_m3, double bottle_mol, double bottle_m3) {
        return (upstream_mol + bottle_mol) / (upstream_m3 + bottle_m3);
    }

    private static Vessel holding(Volume waterVolume, double rho_molPerM3) {
        return new Vessel(waterVolume, new Amount(waterVolume.cubicMetres() * rho_molPerM3));
    }
}
