package org.lowfirst.station.stamp;

/** What the code says the wall is made of. */
public enum Wall {
    STEEL,
    ALUMINIUM,
    COMPOSITE,
    UNKNOWN
}
