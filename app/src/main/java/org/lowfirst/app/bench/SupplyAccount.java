package org.lowfirst.app.bench;

import org.lowfirst.gas.Amount;
import org.lowfirst.gas.Volume;
import org.lowfirst.transfer.Vessel;

/**
 * What the book says of one supply.
 *
 * @param contents gas inside
 * @param drawn true when gas has moved since its gauge was read
 */
record SupplyAccount(Volume waterVolume, Amount contents, boolean drawn) {

    Vessel vessel() {
        return new Vessel(waterVolume, contents);
    }

    /** After gas moved and nobody read the gauge. */
    SupplyAccount moved(double after_mol) {
        return new SupplyAccount(waterVolume, new Amount(Math.max(0.0, after_mol)), true);
    }
}
