package org.lowfirst.station.rules;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;

/**
 * What has been done with the cylinder. Null: not known or not done.
 *
 * @param fills fills so far
 * @param reading what it reads now
 * @param foundOpen its valve stood open when it came
 * @param inspectedEmpty day it was inspected and cleaned after being found empty or open
 * @param hammerTested day of the latest hammer test
 */
public record Use(
        @Nullable Integer fills,
        @Nullable GaugePressure reading,
        boolean foundOpen,
        @Nullable LocalDate inspectedEmpty,
        @Nullable LocalDate hammerTested) {

    public Use {
        if (fills != null && fills < 0) {
            throw new IllegalArgumentException("The number of fills (" + fills + ") must not be negative.");
        }
    }

    public static Use reading(GaugePressure reading) {
        return new Use(null, reading, false, null, null);
    }
}
