package org.lowfirst.planning;

import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;

/**
 * A bottle as it is found and as it is wanted.
 *
 * @param name what the bench calls it
 * @param waterVolume internal volume
 * @param reading settled gauge reading at the bench's temperature
 * @param target settled gauge reading wanted at the bench's temperature
 * @param servicePressure marked pressure at the reference temperature; null when unknown, which refuses the plan
 */
public record BottleToFill(
        String name,
        Volume waterVolume,
        GaugePressure reading,
        GaugePressure target,
        @Nullable GaugePressure servicePressure) {

    public BottleToFill withTarget(GaugePressure wanted) {
        return new BottleToFill(name, waterVolume, reading, wanted, servicePressure);
    }
}
