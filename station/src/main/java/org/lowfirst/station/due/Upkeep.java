package org.lowfirst.station.due;

import java.time.LocalDate;

/**
 * A piece of equipment that is looked after at an interval.
 *
 * @param kind one that is {@link DueKind#equipment}
 * @param name as people call it
 * @param lastDone day it was last replaced, tested or calibrated
 * @param months interval [months], above 0
 * @param source who says so
 */
public record Upkeep(DueKind kind, String name, LocalDate lastDone, int months, String source) {

    public Upkeep {
        if (!kind.equipment()) {
            throw new IllegalArgumentException("The kind of " + name + " (" + kind + ") must be a piece of equipment.");
        }
        if (months <= 0) {
            throw new IllegalArgumentException("The interval of " + name + " (" + months + " months) must be above 0.");
        }
    }

    /** The same, last done on another day. */
    public Upkeep doneOn(LocalDate day) {
        return new Upkeep(kind, name, day, months, source);
    }

    /** When it falls due. */
    public DueItem dueItem() {
        return new DueItem(kind, name, lastDone.plusMonths(months), source);
    }
}
