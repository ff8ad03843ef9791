package org.lowfirst.station.readiness;

/** What to do with a bottle at the start of a shift, most urgent first. */
public enum ShiftState {
    /** Below the floor: take another. */
    SWAP,
    /** Not read in this shift: read it. */
    READ,
    /** Between floor and wish: may stay, refill when there is time. */
    REFILL,
    /** At the wish or above. */
    READY
}
