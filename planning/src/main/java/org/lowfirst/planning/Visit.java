package org.lowfirst.planning;

/** What became of one supply in one fill. */
enum Visit {
    EQUAL,
    TARGET,
    NOT_ABOVE_BOTTLE,
    NOTHING_LEFT_AFTER_HOSE,
    NOT_NEEDED,
    HELD_BACK
}
