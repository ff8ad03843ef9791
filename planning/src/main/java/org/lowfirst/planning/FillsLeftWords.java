package org.lowfirst.planning;

import java.util.Locale;
import java.util.Map;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.words.Phrases;

/** Fills left as people say it. */
final class FillsLeftWords {

    private FillsLeftWords() {}

    static String of(FillsLeft left, ShownUnits units) {
        Phrases phrases = units.phrases();
        GaugePressure next = left.nextStopsAt();
        if (next == null) {
            return left.complete() >= FillsLeft.MOST
                    ? phrases.text("fills-left.most", Map.of("most", Integer.toString(FillsLeft.MOST)))
                    : phrases.text("fills-left.not-needed", Map.of());
        }
        String reading = units.show(next);
        if (left.complete() == 0) {
            return phrases.text("fills-left.none", Map.of("reading", reading));
        }
        return phrases.text(
                "fills-left",
                Map.of(
                        "complete",
                        Integer.toString(left.complete()),
                        "next",
                        ordinal(left.complete() + 1, units.language()),
                        "reading",
                        reading));
    }

    /** The place in a row as the language writes it with its article. */
    static String ordinal(int n, Locale language) {
        return language.getLanguage().equals("de") ? "eine " + n + "." : english(n);
    }

    /** English ordinal with its article: "a 2nd", "an 8th", "an 11th", "an 80th". */
    private static String english(int n) {
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
