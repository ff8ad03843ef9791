package org.lowfirst.station;

/** When a supply is opened in a fill. */
public enum Turn {
    /** Lowest pressure first. */
    BY_RANK,
    /** Before those of lower rank. */
    FIRST,
    /** Not for now; it keeps its rank and a person may still open it. */
    HELD_BACK,
    /** Not at all. */
    TAGGED_OUT;

    /** Whether a plan may open it. */
    public boolean planned() {
        return this == BY_RANK || this == FIRST;
    }
}
