package org.lowfirst.station.due;

import java.time.LocalDate;

/**
 * A piece of equipment that is looked after at an interval.
 *
 * @param kind {@link DueKind#HOSE}, {@link DueKind#GAUGE} or {@link DueKind#RELIEF_VALVE}
 * @param name as people call it
 * @param lastDone day it was last replaced, tested or calibrated
 * @param months interval [months], above 0
 * @param source who says so
 */
public record Upkeep(DueKind kind, String name, LocalDate lastDone, int months, String source) {

    public Upkeep {
        if (kind != DueKind.HOSE && kind != DueKind.GAUGE && kind != DueKind.RELIEF_VALVE) {
            throw new IllegalArgumentException("The kind of " + name + " (" + kind + ") must be a piece of equipment.");
        }
        if (months <= 0) {
            throw new IllegalArgumentException("The interval of " + name + " (" + months + " months) must be above 0.");
        }
    }

    DueItem dueItem() {
        return new DueItem(kind, name, lastDone.plusMonths(months), source);
    }
}
