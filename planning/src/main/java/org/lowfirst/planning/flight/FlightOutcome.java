package org.lowfirst.planning.flight;

/** What came of planning a flight's oxygen. */
public sealed interface FlightOutcome {

    /** The gas was worked out. */
    record Planned(FlightPlan plan) implements FlightOutcome {}

    /**
     * The request cannot be worked out.
     *
     * @param subject name of the occupant or bottle, empty where it is the whole request
     */
    record Refused(Problem problem, String subject, double measured, double limit, String unit)
            implements FlightOutcome {}

    /** What may be wrong with a request. */
    enum Problem {
        NO_OCCUPANTS,
        DUPLICATE_NAME,
        MARGIN_BELOW_ZERO,
        RESERVE_BELOW_ZERO,
        DESCENT_NOT_ABOVE_ZERO,
        TEMPERATURE_OUT_OF_RANGE,
        READING_ABOVE_SERVICE_PRESSURE,
        READING_BELOW_ZERO,
        KEEP_BELOW_ZERO,
        PRESSURE_OUT_OF_RANGE
    }
}
