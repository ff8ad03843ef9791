package org.lowfirst.station.readiness;

/** Where a bottle is meant to be. */
public enum Place {
    /** On the vehicle or in the aircraft. */
    IN_SERVICE,
    /** On the shelf, to be swapped in. */
    SPARE,
    /** Not here: at the tester's, lent, lost. */
    AWAY
}
