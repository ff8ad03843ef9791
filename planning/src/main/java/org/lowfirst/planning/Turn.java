package org.lowfirst.planning;

/** When a supply is opened in a fill. */
public enum Turn {
    /** By its rank, lowest first. */
    BY_RANK,
    /** Before those of lower rank; among several such the lowest first. */
    FIRST,
    /** Not at all; it keeps its rank. */
    HELD_BACK
}
