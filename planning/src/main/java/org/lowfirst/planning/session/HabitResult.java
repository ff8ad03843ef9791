package org.lowfirst.planning.session;

import org.lowfirst.gas.Amount;

/**
 * What a habit would come to: one bottle after another, each lowest supply first to its wish.
 *
 * @param habit in which order the bottles are taken
 * @param ready bottles ready
 * @param gasLeft gas left above the highest stop
 */
public record HabitResult(BottleOrder habit, int ready, Amount gasLeft) {

    /** Order of the bottles. */
    public enum BottleOrder {
        AS_LISTED,
        EMPTIEST_FIRST,
        FULLEST_FIRST
    }
}
