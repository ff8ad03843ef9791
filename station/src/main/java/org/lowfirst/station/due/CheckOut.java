package org.lowfirst.station.due;

import java.time.LocalDate;

/**
 * A person's check-out or training.
 *
 * @param lastDay last day it is good for
 * @param source who says so
 */
public record CheckOut(String person, LocalDate lastDay, String source) {

    DueItem dueItem() {
        return new DueItem(DueKind.CHECK_OUT, person, lastDay, source);
    }
}
