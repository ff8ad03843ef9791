package org.lowfirst.app.flight;

/** What came of planning a flight from a file. */
public sealed interface FlightResult permits PlannedFlight, RefusedFlight {}
