package org.lowfirst.planning;

import java.util.Locale;
import java.util.Map;
import org.lowfirst.planning.words.Phrases;

/** How a chance is told: in whole per cent, and neither as none nor as certain, for it was counted in a number of trials. */
public final class Chance {

    private static final double LOW = 0.01;
    private static final double HIGH = 0.99;

    private Chance() {}

    /**
     * Per cent without the sign: "12", "under 1", "over 99".
     *
     * @param chance 0 to 1
     */
    public static String percent(double chance, Locale language) {
        return told(chance, Math.round(100.0 * chance), language);
    }

    /** The same, but a part of a per cent is left out, so that what is just below a wanted chance does not look like it. */
    public static String percentDown(double chance, Locale language) {
        return told(chance, (long) Math.floor(100.0 * chance + 1e-9), language);
    }

    private static String told(double chance, long percent, Locale language) {
        if (chance < LOW) {
            return Phrases.in(language).text("chance.under", Map.of());
        }
        return chance > HIGH ? Phrases.in(language).text("chance.over", Map.of()) : Long.toString(percent);
    }
}
