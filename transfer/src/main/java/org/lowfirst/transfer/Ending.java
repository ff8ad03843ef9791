package org.lowfirst.transfer;

/** How a stage ends. */
public enum Ending {
    /** Supply, hose and bottle have come to one pressure, at or below the stop. */
    EQUAL,
    /** The bottle has come to the stop; the valve is shut while the supply still has more pressure. */
    TARGET,
    /** The supply, after filling the hose, is not above the bottle, or the bottle is at its stop: no valve is opened. */
    NOTHING_MOVED
}
