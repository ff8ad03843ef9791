package org.lowfirst.planning.ahead;

import java.time.LocalDate;

/**
 * Days with more fills than usual, on top of what comes anyway: a camp, a competition week, an exercise.
 *
 * @param name what people call it
 * @param date first day
 * @param days how long it lasts
 * @param fills expected number in all, spread evenly over the days
 */
public record PlannedEvent(String name, LocalDate date, int days, double fills) {

    /** A single day. */
    public PlannedEvent(String name, LocalDate date, double fills) {
        this(name, date, 1, fills);
    }
}
