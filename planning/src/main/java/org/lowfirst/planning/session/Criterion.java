package org.lowfirst.planning.session;

/** What decides between plans that make the same number of bottles ready. */
public enum Criterion {
    /** More bottles of the most important priority ready, then of the next. */
    PRIORITY,
    /** More bottles at their wish, not only at their floor. */
    WISH,
    /** More gas left above the highest stop: the gas that can still finish a bottle. */
    GAS,
    /** Fewer hose changes and supply valves opened. */
    CHANGES,
    /** The last valve shut earlier. */
    TIME
}
