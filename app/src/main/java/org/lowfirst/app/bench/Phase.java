package org.lowfirst.app.bench;

/** Where a guided fill stands between two entries of the journal. The order is the order of work (common practice). */
public enum Phase {
    /** All valves shut; connect the bottle. */
    CONNECT,
    /** Transfer shut; open the bottle's valve. */
    OPEN_BOTTLE,
    /** Transfer shut; open the supply slowly. */
    OPEN_SUPPLY,
    /** Crack the transfer valve slowly. */
    CRACK_TRANSFER,
    /** Gas flows; watch the bottle's gauge. */
    WATCH,
    SHUT_TRANSFER,
    SHUT_SUPPLY,
    /** Read the gauges and enter them: the stage is recorded. */
    ENTER_READING,
    /** Last stage done; shut the bottle's valve. */
    SHUT_BOTTLE,
    /** Vent the hose, then disconnect. */
    VENT_HOSE,
    /** Enter the last reading: the fill is finished. */
    FINISH
}
