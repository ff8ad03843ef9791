package org.lowfirst.station.charges;

import java.time.LocalDate;
import java.util.NavigableSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * One stay of a rented supply at the bench.
 *
 * @param serial its serial number
 * @param left day it went back, null while it is here
 */
public record RentStay(
        String serial, LocalDate arrived, @Nullable LocalDate left) {

    public RentStay {
        if (left != null && left.isBefore(arrived)) {
            throw new IllegalArgumentException(
                    "The supply " + serial + " must not leave (" + left + ") before it came (" + arrived + ").");
        }
    }

    /** The days a supplier may charge for, up to today. */
    public NavigableSet<LocalDate> chargeableDays(RentTerms terms, LocalDate today) {
        LocalDate last = today;
        if (left != null) {
            LocalDate end = terms.dayCount() == DayCount.BOTH_ENDS ? left : left.minusDays(1);
            last = end.isBefore(today) ? end : today;
        }
        NavigableSet<LocalDate> days = new TreeSet<>();
        for (LocalDate day = arrived.plusDays(terms.freeDays()); !day.isAfter(last); day = day.plusDays(1)) {
            days.add(day);
        }
        return days;
    }
}
