package org.lowfirst.planning.contents;

import org.lowfirst.gas.Temperature;

/** Temperatures from lowest to highest, both accepted. */
public record TemperatureRange(Temperature lowest, Temperature highest) {

    public TemperatureRange {
        if (lowest.compareTo(highest) > 0) {
            throw new IllegalArgumentException("The lowest temperature (" + lowest.kelvin()
                    + " K) must not be above the highest (" + highest.kelvin() + " K).");
        }
    }

    public boolean contains(Temperature temperature) {
        return temperature.compareTo(lowest) >= 0 && temperature.compareTo(highest) <= 0;
    }
}
