package org.lowfirst.station;

import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * Some days with more fills than usual: a camp, a competition week, an exercise.
 *
 * @param name what people call it
 * @param from first day, at the bench
 * @param days how long it lasts
 * @param fills expected in all, on top of what comes anyway
 */
public record Happening(String name, LocalDate from, int days, BigDecimal fills) {

    /** The last day. */
    public LocalDate until() {
        return from.plusDays(days - 1L);
    }
}
