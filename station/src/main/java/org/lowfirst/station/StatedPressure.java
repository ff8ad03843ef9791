package org.lowfirst.station;

import java.math.BigDecimal;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;

/**
 * A gauge pressure as stated.
 *
 * @param value number as typed, in {@code unit}, gauge
 */
public record StatedPressure(BigDecimal value, PressureUnit unit)
        implements StatedQuantity, Comparable<StatedPressure> {

    public static StatedPressure of(String value, PressureUnit unit) {
        return new StatedPressure(new BigDecimal(value), unit);
    }

    @Override
    public String symbol() {
        return unit.symbol();
    }

    public GaugePressure gauge() {
        return GaugePressure.of(value.doubleValue(), unit);
    }

    @Override
    public int compareTo(StatedPressure other) {
        return unit == other.unit ? value.compareTo(other.value) : gauge().compareTo(other.gauge());
    }
}
