package org.lowfirst.planning.ahead;

import java.util.Locale;

/**
 * What a forecast rests on.
 *
 * @param days of history looked at
 * @param fills in them
 * @param shareOfHistory how much the history counts in the rate of fills, from 0 to 1; the rest is the guess
 * @param guessed true when nobody made a guess and the built-in one was taken
 */
public record Knowledge(int days, int fills, double shareOfHistory, boolean guessed) {

    public String inWords() {
        String guess = guessed ? "a built-in guess" : "the guess you gave";
        if (days == 0) {
            return "There is no history yet: this rests on " + guess + " alone.";
        }
        String from = "From %s and %s.".formatted(count(fills, "fill"), count(days, "day"));
        int rest = (int) Math.round(100.0 * (1.0 - shareOfHistory));
        return rest < 10
                ? from
                : from + String.format(Locale.ROOT, " That is little: %d %% of the rate is still %s.", rest, guess);
    }

    private static String count(int number, String what) {
        return number == 1 ? "1 " + what : number + " " + what + "s";
    }
}
