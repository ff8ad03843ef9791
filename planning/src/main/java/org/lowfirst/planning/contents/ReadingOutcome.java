package org.lowfirst.planning.contents;

import org.jspecify.annotations.Nullable;

/** What came of checking a reading. */
public sealed interface ReadingOutcome {

    /** It can be used. */
    record Accepted(ContentsMeasurement measurement) implements ReadingOutcome {}

    /**
     * It cannot be used. It is kept as it was given.
     *
     * @param reading as given; null when a fact without a reading is refused
     * @param rule what it breaks
     * @param measured the value that breaks it, in {@code unit}
     * @param limit the limit, in {@code unit}
     * @param unit symbol of the unit of both numbers
     * @param advice what to do
     */
    record Refused(
            @Nullable GaugeReading reading, Rule rule, double measured, double limit, String unit, ReadingAdvice advice)
            implements ReadingOutcome {}

    /** What a reading may break. */
    enum Rule {
        ABOVE_FULL_SCALE,
        BELOW_ZERO,
        TEMPERATURE_TOO_LOW,
        TEMPERATURE_TOO_HIGH,
        /** Earlier than the reading before it. */
        TIME_GOES_BACK,
        /** The bottle's gauge falls while it is being filled. */
        FALLS_WHILE_FILLING,
        /** The gas equation has no answer there. */
        OUTSIDE_GAS_EQUATION,
        UNKNOWN_CYLINDER,
        UNKNOWN_GAUGE,
        /** The reading of a stage was taken on another cylinder than the stage names. */
        OTHER_CYLINDER
    }

    /** What a person can do about a refused reading. */
    enum ReadingAdvice {
        CHECK_NUMBER_AND_UNIT,
        USE_A_GAUGE_WITH_A_LARGER_SCALE,
        CHECK_THAT_THE_GAUGE_RESTS_AT_ZERO,
        CHECK_THE_CLOCK,
        CHECK_VALVES_AND_CONNECTIONS,
        REGISTER_IT_FIRST
    }
}
