package org.lowfirst.app.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;

/** Numbers and counts in words for people. */
public final class Numerals {

    private static final MathContext DIGITS = new MathContext(6);

    private Numerals() {}

    /** About as exact as a person needs a limit: three digits that count, thousands apart. */
    public static String rounded(double value) {
        return grouped(new BigDecimal(value, new MathContext(3)).doubleValue());
    }

    /** A number and its unit, thousands apart. */
    public static String grouped(String written) {
        int space = written.indexOf(' ');
        return grouped(Double.parseDouble(written.substring(0, space))) + written.substring(space);
    }

    /** At most six digits, no trailing zeros, thousands apart. */
    public static String grouped(double value) {
        BigDecimal rounded = new BigDecimal(value, DIGITS).stripTrailingZeros();
        int digits = Math.max(0, rounded.scale());
        return String.format(Locale.ROOT, "%,." + digits + "f", rounded);
    }

    /** "1st", "2nd", "11th", "22nd". */
    public static String ordinal(int number) {
        int lastTwo = number % 100;
        if (lastTwo >= 11 && lastTwo <= 13) {
            return number + "th";
        }
        return number
                + switch (number % 10) {
                    case 1 -> "st";
                    case 2 -> "nd";
                    case 3 -> "rd";
                    default -> "th";
                };
    }

    /** "1 problem", "3 problems". */
    public static String count(long number, String singular) {
        return String.format(Locale.ROOT, "%,d %s%s", number, singular, number == 1 ? "" : "s");
    }
}
