package org.lowfirst.station;

import java.math.BigDecimal;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.TemperatureUnit;

/**
 * A temperature as stated.
 *
 * @param value number as typed, in {@code unit}, above absolute zero
 */
public record StatedTemperature(BigDecimal value, TemperatureUnit unit) implements StatedQuantity {

    public StatedTemperature {
        Temperature.of(value.doubleValue(), unit);
    }

    public static StatedTemperature of(String value, TemperatureUnit unit) {
        return new StatedTemperature(new BigDecimal(value), unit);
    }

    @Override
    public String symbol() {
        return unit.symbol();
    }

    public Temperature temperature() {
        return Temperature.of(value.doubleValue(), unit);
    }
}
