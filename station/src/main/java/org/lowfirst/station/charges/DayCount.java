package org.lowfirst.station.charges;

/** Which days of a stay are charged rent. */
public enum DayCount {
    /** Both the day it came and the day it left. */
    BOTH_ENDS,
    /** The day it came, not the day it left. */
    ARRIVAL_ONLY
}
