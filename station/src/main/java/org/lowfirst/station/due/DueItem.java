package org.lowfirst.station.due;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * One thing that falls due.
 *
 * @param subject what or whom it is about, as people call it
 * @param lastDay last day it is good for
 * @param source rule or agreement it comes from
 */
public record DueItem(DueKind kind, String subject, LocalDate lastDay, String source) {

    /** Days left from today; negative when it is past. */
    public long daysLeft(LocalDate today) {
        return ChronoUnit.DAYS.between(today, lastDay);
    }

    public boolean past(LocalDate today) {
        return today.isAfter(lastDay);
    }
}
