package org.lowfirst.planning.study;

import java.util.Collections;
import java.util.List;

/**
 * How many bottles are brought, when and which. Bottles come at random (Poisson) around the mean of the day.
 *
 * @param fillsPerYear mean number of bottles a year
 * @param yearSpread how much good and bad years differ: standard deviation of a year's mean as a share of it, 0 for none
 * @param months 12 factors from January on, in any unit
 * @param weekdays 7 factors from Monday on, in any unit
 * @param bottles the kinds and their shares
 */
public record Demand(
        double fillsPerYear, double yearSpread, List<Double> months, List<Double> weekdays, List<BottleUse> bottles) {

    public static final List<Double> EVERY_MONTH_ALIKE = Collections.nCopies(12, 1.0);
    public static final List<Double> EVERY_DAY_ALIKE = Collections.nCopies(7, 1.0);

    public Demand {
        months = List.copyOf(months);
        weekdays = List.copyOf(weekdays);
        bottles = List.copyOf(bottles);
    }

    /** The same number on any day of the year. */
    public static Demand even(double fillsPerYear, List<BottleUse> bottles) {
        return new Demand(fillsPerYear, 0.0, EVERY_MONTH_ALIKE, EVERY_DAY_ALIKE, bottles);
    }
}
