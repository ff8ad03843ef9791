package org.lowfirst.station;

/** What a cylinder's wall is made of. */
public enum Material {
    ALUMINIUM,
    STEEL,
    COMPOSITE
}
