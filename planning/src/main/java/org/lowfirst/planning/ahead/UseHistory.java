package org.lowfirst.planning.ahead;

import java.time.LocalDate;
import java.util.List;

/**
 * The fills of a span of days; days without any count too.
 *
 * @param from first day that was recorded
 * @param days number of days recorded from it on, 0 for no history
 * @param fills in any order, each on one of these days
 */
public record UseHistory(LocalDate from, int days, List<FilledOn> fills) {

    public UseHistory {
        fills = List.copyOf(fills);
    }

    /** Nothing recorded yet. */
    public static UseHistory none(LocalDate today) {
        return new UseHistory(today, 0, List.of());
    }
}
