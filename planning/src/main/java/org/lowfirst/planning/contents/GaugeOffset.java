package org.lowfirst.planning.contents;

import org.lowfirst.gas.GaugePressure;

/**
 * The lasting error of one gauge as learned from the journal: what it shows too much.
 *
 * @param tooHigh estimate, negative when it shows too little
 * @param standardDeviation of that estimate, at least 0
 */
public record GaugeOffset(GaugePressure tooHigh, GaugePressure standardDeviation) {

    public GaugeOffset {
        if (!(standardDeviation.pascals() >= 0.0)) {
            throw new IllegalArgumentException(
                    "The standard deviation (" + standardDeviation.pascals() + " Pa) must be at least 0.");
        }
    }
}
