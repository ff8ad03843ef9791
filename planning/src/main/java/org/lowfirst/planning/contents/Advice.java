package org.lowfirst.planning.contents;

/** What to do about a verdict. */
public enum Advice {
    NOTHING,
    /** Read again when settled, near the temperature of the earlier reading. */
    READ_AGAIN_SETTLED,
    /** Close the valve, test the connections with the fluid the rules allow, hold a timed leak check. */
    FIND_THE_LEAK,
    CHECK_THE_STAMPED_VOLUME,
    CHECK_VALVES_AND_JOURNAL,
    COMPARE_THE_GAUGES
}
