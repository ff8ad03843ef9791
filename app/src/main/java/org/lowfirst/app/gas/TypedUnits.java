package org.lowfirst.app.gas;

import java.util.function.Function;
import org.lowfirst.gas.PressureUnit;

/** Finds the unit that a symbol stands for. */
final class TypedUnits {

    private TypedUnits() {}

    /** The unit of a pressure, absolute or gauge. */
    static PressureUnit pressure(String symbol) {
        for (PressureUnit unit : PressureUnit.values()) {
            if (symbol.equals(unit.symbol()) || symbol.equals(unit.symbol() + "a")) {
                return unit;
            }
        }
        throw unknown(symbol);
    }

    static <U> U of(U[] units, Function<U, String> symbolOf, String symbol) {
        for (U unit : units) {
            if (symbolOf.apply(unit).equals(symbol)) {
                return unit;
            }
        }
        throw unknown(symbol);
    }

    private static IllegalArgumentException unknown(String symbol) {
        return new IllegalArgumentException("The unit (" + symbol + ") must be one that quantities are typed in.");
    }
}
