package org.lowfirst.app.honest;

import org.lowfirst.gas.Amount;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.Volume;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.planning.ShownUnits;

/** Amounts told as the volume of free gas. */
final class FreeVolumes {

    private FreeVolumes() {}

    static Volume of(double amount_mol, EquationOfState gas, ReferenceCondition free) {
        return gas.freeVolume(new Amount(amount_mol), free);
    }

    /** To a litre or a tenth of a cubic foot. */
    static String words(double amount_mol, EquationOfState gas, ReferenceCondition free, ShownUnits units) {
        String size = words(of(Math.abs(amount_mol), gas, free), units);
        return amount_mol < 0.0 ? "-" + size : size;
    }

    static String words(Volume volume, ShownUnits units) {
        return units.volume() == VolumeUnit.CUBIC_FOOT
                ? units.number(volume.to(VolumeUnit.CUBIC_FOOT), 1) + " cu ft"
                : units.number(volume.toLitres(), 0) + " L";
    }
}
