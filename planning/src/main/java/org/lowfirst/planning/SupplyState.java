package org.lowfirst.planning;

import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;

/**
 * A supply as it is found.
 *
 * @param name what the bench calls it, one of a kind within the bank
 * @param waterVolume internal volume
 * @param reading settled gauge reading at the bench's temperature
 * @param heldBack true when it keeps its rank but must not be opened
 */
public record SupplyState(String name, Volume waterVolume, GaugePressure reading, boolean heldBack) {

    public SupplyState(String name, Volume waterVolume, GaugePressure reading) {
        this(name, waterVolume, reading, false);
    }

    public SupplyState holdBack() {
        return new SupplyState(name, waterVolume, reading, true);
    }
}
