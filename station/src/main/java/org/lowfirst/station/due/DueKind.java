package org.lowfirst.station.due;

/** What falls due. The words for people are in the message file, by this code. */
public enum DueKind {
    CYLINDER_TEST,
    CYLINDER_LIFE,
    HOSE,
    GAUGE,
    RELIEF_VALVE,
    /** Of a rented supply, as stamped; its owner has it tested. */
    SUPPLY_TEST,
    CHECK_OUT,
    TRAINING,
    SUPPLY_ORDER;

    /** Whether it is a piece of equipment with an interval. */
    public boolean equipment() {
        return this == HOSE || this == GAUGE || this == RELIEF_VALVE || this == SUPPLY_TEST;
    }
}
