package org.lowfirst.app.gas;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import org.lowfirst.app.sheet.Numerals;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;

/** Computed numbers with the digits a person needs. */
final class Figures {

    private static final MathContext FOUR = new MathContext(4);

    private Figures() {}

    /** A computed reading: to 1 psi, 0.1 bar, 10 kPa or 0.01 MPa. */
    static String reading(GaugePressure reading, PressureUnit unit) {
        double value = reading.to(unit);
        String number = switch (unit) {
            case PSI -> fixed(value, 0);
            case BAR -> fixed(value, 1);
            case KILOPASCAL -> fixed(10.0 * Math.rint(value / 10.0), 0);
            case MEGAPASCAL -> fixed(value, 2);
        };
        return number + " " + unit.symbol();
    }

    /** Four digits that count. */
    static String four(double value) {
        return Numerals.grouped(new BigDecimal(value, FOUR).doubleValue());
    }

    static String percent(double value) {
        return fixed(value, 1) + " %";
    }

    static String fixed(double value, int digits) {
        String text = String.format(Locale.ROOT, "%,." + digits + "f", value);
        return text.matches("-0(\\.0+)?") ? text.substring(1) : text;
    }
}
