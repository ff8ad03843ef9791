package org.lowfirst.planning.warm;

/** What decides the stop reading. */
public enum StopReason {
    /** There the bottle holds what its marking allows. */
    FULL,
    /** There the bottle holds what was wanted. */
    TARGET,
    /** There the gauge shows the marked service pressure; the bottle is not full, because the gas is warm. */
    SERVICE_PRESSURE,
    /** There the bottle holds what the rule book permits, which is not what is marked. */
    RULE_BOOK,
    /** There the gauge shows what the rule book permits; the bottle is not full, because the gas is warm. */
    RULE_BOOK_READING,
    /** Beyond, a hot bottle would come to more than the rule set allows. */
    DEVELOPED_PRESSURE
}
