package org.lowfirst.gas;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/**
 * Writes the digits of numbers in one language: with a decimal comma and narrow spaces between thousands where the language has a
 * decimal comma, else with a point and commas. {@link TypedNumber} reads both back. Immutable and thread-safe.
 */
public final class Digits {

    static final char NARROW_SPACE = '\u202f';

    private final boolean comma;

    private Digits(boolean comma) {
        this.comma = comma;
    }

    public static Digits in(Locale language) {
        return new Digits(DecimalFormatSymbols.getInstance(language).getDecimalSeparator() == ',');
    }

    /** Whether decimals stand behind a comma. */
    public boolean comma() {
        return comma;
    }

    /** Rounded half up, thousands set apart: "1,450.5"; never "-0". */
    public String of(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%,." + decimals + "f", value);
        return written(text.startsWith("-0") && text.matches("-0[.0]*") ? text.substring(1) : text);
    }

    /** With all its decimals, thousands set apart. */
    public String of(BigDecimal value) {
        return written(String.format(Locale.ROOT, "%,." + Math.max(0, value.scale()) + "f", value));
    }

    /** As it would be typed: no thousands set apart, no needless zeros, no exponent. */
    public String plain(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        return written(
                (stripped.scale() < 0 ? stripped.setScale(0, RoundingMode.UNNECESSARY) : stripped).toPlainString());
    }

    /** The same with all the decimals it has. */
    public String typed(BigDecimal value) {
        return written(value.toPlainString());
    }

    /** A number that is written with a decimal point, and commas between thousands or none, in this language. */
    public String written(String number) {
        return comma ? number.replace(',', NARROW_SPACE).replace('.', ',') : number;
    }
}
