package org.lowfirst.web.gate;

import org.lowfirst.app.fitness.FitnessReport;
import org.lowfirst.app.fitness.FitnessWord;

/**
 * The verdict on a bottle in a word and a shape.
 *
 * @param looks class of the stylesheet and of the shape: "fit", "noted", "ask", "no"
 * @param text word and what is left
 */
public record FitTag(String looks, String text) {

    public static FitTag of(FitnessReport report) {
        return new FitTag(looks(report.word()), report.headline());
    }

    private static String looks(FitnessWord word) {
        return switch (word) {
            case FIT -> "fit";
            case FIT_WITH_NOTE, SET_ASIDE -> "noted";
            case TO_LOOK_AT, NOT_ENTERED -> "ask";
            case UNFIT, USE_UP, LIFE_OVER -> "no";
        };
    }
}
