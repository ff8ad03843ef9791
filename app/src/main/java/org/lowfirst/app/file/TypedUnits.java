package org.lowfirst.app.file;

import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.TemperatureUnit;

/** Finds the unit that a symbol stands for, as reading a quantity gives it. */
public final class TypedUnits {

    private TypedUnits() {}

    /** The unit of a pressure; an absolute one ("psia") counts as the gauge one it ends up as. */
    public static PressureUnit pressure(String symbol) {
        for (PressureUnit unit : PressureUnit.values()) {
            if (symbol.equals(unit.symbol()) || symbol.equals(unit.symbol() + "a")) {
                return unit;
            }
        }
        throw unknown(symbol);
    }

    public static TemperatureUnit temperature(String symbol) {
        for (TemperatureUnit unit : TemperatureUnit.values()) {
            if (symbol.equals(unit.symbol())) {
                return unit;
            }
        }
        throw unknown(symbol);
    }

    private static IllegalArgumentException unknown(String symbol) {
        return new IllegalArgumentException("The unit (" + symbol + ") must be one that quantities are typed in.");
    }
}
