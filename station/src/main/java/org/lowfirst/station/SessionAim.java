package org.lowfirst.station;

/** What decides between plans of a session that make the same number of bottles ready. */
public enum SessionAim {
    USUAL,
    GAS,
    CHANGES,
    TIME
}
