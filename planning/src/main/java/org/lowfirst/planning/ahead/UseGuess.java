package org.lowfirst.planning.ahead;

import java.util.Collections;
import java.util.List;

/**
 * What is thought of the use before any history.
 *
 * @param fillsPerYear most likely number
 * @param weighsFills how many fills' worth of history it weighs: 1 for hardly a notion, 25 for within a fifth or so
 * @param weekdays 7 factors from Monday on, in any unit
 * @param months 12 factors from January on, in any unit
 */
public record UseGuess(double fillsPerYear, double weighsFills, List<Double> weekdays, List<Double> months) {

    public UseGuess {
        weekdays = List.copyOf(weekdays);
        months = List.copyOf(months);
    }

    /** All days alike. */
    public static UseGuess of(double fillsPerYear, double weighsFills) {
        return new UseGuess(fillsPerYear, weighsFills, Collections.nCopies(7, 1.0), Collections.nCopies(12, 1.0));
    }
}
