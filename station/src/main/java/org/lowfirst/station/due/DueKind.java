package org.lowfirst.station.due;

/** What falls due. The words for people are in the message file, by this code. */
public enum DueKind {
    CYLINDER_TEST,
    CYLINDER_LIFE,
    HOSE,
    GAUGE,
    RELIEF_VALVE,
    CHECK_OUT
}
