package org.lowfirst.station.charges;

import org.lowfirst.gas.VolumeUnit;

/** What gas is sold by. */
public enum GasUnit {
    STANDARD_LITRE(VolumeUnit.LITRE),
    STANDARD_CUBIC_FOOT(VolumeUnit.CUBIC_FOOT);

    private final VolumeUnit unit;

    GasUnit(VolumeUnit unit) {
        this.unit = unit;
    }

    public VolumeUnit unit() {
        return unit;
    }
}
