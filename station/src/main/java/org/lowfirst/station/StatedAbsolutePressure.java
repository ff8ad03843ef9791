package org.lowfirst.station;

import java.math.BigDecimal;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.PressureUnit;

/**
 * An absolute pressure as stated, such as that of the surroundings.
 *
 * @param value number as typed, in {@code unit}, absolute, not below zero
 */
public record StatedAbsolutePressure(BigDecimal value, PressureUnit unit) implements StatedQuantity {

    /** The standard atmosphere, 101.325 kPa. */
    public static final StatedAbsolutePressure STANDARD = of("101.325", PressureUnit.KILOPASCAL);

    public StatedAbsolutePressure {
        AbsolutePressure.of(value.doubleValue(), unit);
    }

    public static StatedAbsolutePressure of(String value, PressureUnit unit) {
        return new StatedAbsolutePressure(new BigDecimal(value), unit);
    }

    @Override
    public String symbol() {
        return unit.symbol();
    }

    public AbsolutePressure absolute() {
        return AbsolutePressure.of(value.doubleValue(), unit);
    }
}
