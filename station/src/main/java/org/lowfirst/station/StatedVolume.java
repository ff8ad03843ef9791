package org.lowfirst.station;

import java.math.BigDecimal;
import org.lowfirst.gas.Volume;
import org.lowfirst.gas.VolumeUnit;

/**
 * A volume as stated.
 *
 * @param value number as typed, in {@code unit}, not below zero
 */
public record StatedVolume(BigDecimal value, VolumeUnit unit) implements StatedQuantity {

    public StatedVolume {
        Volume.of(value.doubleValue(), unit);
    }

    public static StatedVolume of(String value, VolumeUnit unit) {
        return new StatedVolume(new BigDecimal(value), unit);
    }

    @Override
    public String symbol() {
        return unit.symbol();
    }

    public Volume volume() {
        return Volume.of(value.doubleValue(), unit);
    }
}
