package org.lowfirst.station;

import java.time.LocalDate;

/**
 * A training or check-out that a person has.
 *
 * @param lastDay last day it is good for
 * @param source who says so
 */
public record Attest(LocalDate lastDay, String source) {

    public boolean past(LocalDate day) {
        return day.isAfter(lastDay);
    }
}
