package org.lowfirst.planning.ahead;

import java.util.Locale;
import java.util.Map;
import org.lowfirst.planning.words.Phrases;

/**
 * What a forecast rests on.
 *
 * @param days of history looked at
 * @param fills in them
 * @param shareOfHistory how much the history counts in the rate of fills, from 0 to 1; the rest is the guess
 * @param guessed true when nobody made a guess and the built-in one was taken
 */
public record Knowledge(int days, int fills, double shareOfHistory, boolean guessed) {

    /** In English. */
    public String inWords() {
        return inWords(Locale.ENGLISH);
    }

    public String inWords(Locale language) {
        Phrases phrases = Phrases.in(language);
        String guess = phrases.text(guessed ? "knowledge.built-in" : "knowledge.given", Map.of());
        if (days == 0) {
            return phrases.text("knowledge.none", Map.of("guess", guess));
        }
        String from = phrases.text(
                "knowledge.from", Map.of("fills", count(phrases, "fill", fills), "days", count(phrases, "day", days)));
        int rest = (int) Math.round(100.0 * (1.0 - shareOfHistory));
        return rest < 10
                ? from
                : from + " " + phrases.text("knowledge.little", Map.of("rest", Integer.toString(rest), "guess", guess));
    }

    private static String count(Phrases phrases, String what, int number) {
        return phrases.text(
                "count." + what + (number == 1 ? ".one" : ".many"), Map.of("count", Integer.toString(number)));
    }
}
