package org.lowfirst.transfer.warm;

/** How a warm stage ends. */
public enum WarmEnding {
    /** The bottle's gauge has come to the reading of the stop. */
    STOP,
    /** The gas in the bottle has come to the density of the stop. */
    FULL,
    /** Both gauges show the same. */
    EQUAL,
    /** The longest time has passed. */
    TIME_UP,
    /** The source is not above the bottle, or the bottle is at its stop: no valve is opened. */
    NOTHING_MOVED
}
