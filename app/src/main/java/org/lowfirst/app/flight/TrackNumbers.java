package org.lowfirst.app.flight;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import org.lowfirst.planning.flight.Altitude;

/** Numbers of a track in the reader's language. */
record TrackNumbers(Locale language) {

    private static final MathContext DIGITS = new MathContext(6);

    /** At most six digits, no trailing zeros, thousands apart. */
    String grouped(double value) {
        BigDecimal rounded = new BigDecimal(value, DIGITS).stripTrailingZeros();
        return String.format(language, "%,." + Math.max(0, rounded.scale()) + "f", rounded);
    }

    /** An altitude [m] in metres and feet. */
    String metres(double metres) {
        return String.format(language, "%,.0f m (%,.0f ft)", metres, new Altitude(metres).toFeet());
    }
}
