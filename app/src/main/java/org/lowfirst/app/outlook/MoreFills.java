package org.lowfirst.app.outlook;

import java.time.LocalDate;
import org.lowfirst.planning.ahead.PlannedEvent;

/**
 * More fills than usual, for one look ahead only.
 *
 * @param from first day
 * @param days how many days, from 1
 * @param fills in all
 */
public record MoreFills(LocalDate from, int days, double fills) {

    PlannedEvent event() {
        return new PlannedEvent("of " + from, from, days, fills);
    }
}
