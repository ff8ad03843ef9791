package org.lowfirst.station.charges;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;

/**
 * One invoice line held against the stays.
 *
 * @param problems none when the line may be charged as it is
 * @param payableDays days of the line that may be charged and were not charged by an earlier line
 * @param payable what may be charged for them
 * @param notHere days charged on which the supply was not here or rent was free
 * @param chargedBefore days that an earlier line charged already
 */
public record RentFinding(
        RentLine line,
        Set<Problem> problems,
        int payableDays,
        Money payable,
        List<LocalDate> notHere,
        List<LocalDate> chargedBefore) {

    public RentFinding {
        problems = Set.copyOf(problems);
        notHere = List.copyOf(notHere);
        chargedBefore = List.copyOf(chargedBefore);
    }

    /** What was charged more than may be; below zero when less was. */
    public Money overcharge() {
        return line.amount().minus(payable);
    }

    /** What is wrong with a line. */
    public enum Problem {
        SERIAL_NEVER_HERE,
        DAYS_NOT_HERE,
        CHARGED_TWICE,
        DAYS_MISCOUNTED,
        OTHER_RATE,
        WRONG_SUM
    }
}
