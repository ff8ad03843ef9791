package org.lowfirst.station.rules;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Days on which a rule is applied.
 *
 * @param from first day
 * @param until last day, null when open
 */
public record InForce(LocalDate from, @Nullable LocalDate until) {

    public InForce {
        if (until != null && until.isBefore(from)) {
            throw new IllegalArgumentException(
                    "The last day (" + until + ") must not be before the first (" + from + ").");
        }
    }

    public boolean on(LocalDate day) {
        return !day.isBefore(from) && (until == null || !day.isAfter(until));
    }
}
