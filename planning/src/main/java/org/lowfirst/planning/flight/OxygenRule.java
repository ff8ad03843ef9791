package org.lowfirst.planning.flight;

import java.time.Duration;

/**
 * One sentence of a rule text about when oxygen is needed, as data.
 *
 * @param set rule set it belongs to, e.g. "us-91"
 * @param reference paragraph, e.g. "14 CFR 91.211(a)(1)"
 * @param role whom it speaks of
 * @param above altitude it starts above
 * @param upTo altitude it ends at, inclusive
 * @param after time above {@code above} in this flight that is free of it
 * @param duty what it asks
 * @param sharePercent share of the persons of the role it speaks of, 0 to 100
 * @param status whether the text was read or is from memory
 */
public record OxygenRule(
        String set,
        String reference,
        Occupant.Role role,
        Altitude above,
        Altitude upTo,
        Duration after,
        Duty duty,
        int sharePercent,
        String status) {

    /** What a rule asks for. */
    public enum Duty {
        USE,
        PROVIDE
    }
}
