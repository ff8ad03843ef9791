package org.lowfirst.planning;

import java.util.Locale;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;

/** Fills left as people say it. */
final class FillsLeftWords {

    private FillsLeftWords() {}

    static String of(FillsLeft left, PressureUnit unit) {
        GaugePressure next = left.nextStopsAt();
        if (next == null) {
            return left.complete() >= FillsLeft.MOST ? FillsLeft.MOST + " or more" : "none needed";
        }
        String reading = ShownUnits.pressure(next, unit);
        if (left.complete() == 0) {
            return "none; the next would stop at about " + reading;
        }
        return "%s, and %s to about %s".formatted(left.complete(), ordinal(left.complete() + 1), reading);
    }

    /** English ordinal with its article: "a 2nd", "an 8th", "an 11th", "an 80th". */
    static String ordinal(int n) {
        int lastTwo = n % 100;
        String ending = lastTwo >= 11 && lastTwo <= 13
                ? "th"
                : switch (n % 10) {
                    case 1 -> "st";
                    case 2 -> "nd";
                    case 3 -> "rd";
                    default -> "th";
                };
        String digits = Integer.toString(n);
        boolean vowel = digits.startsWith("8") || n == 11 || n == 18;
        return String.format(Locale.ROOT, "%s %s%s", vowel ? "an" : "a", digits, ending);
    }
}
