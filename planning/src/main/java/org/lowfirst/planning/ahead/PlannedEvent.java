package org.lowfirst.planning.ahead;

import java.time.LocalDate;

/**
 * A day with more fills than usual, on top of what comes anyway.
 *
 * @param name what people call it
 * @param fills expected number
 */
public record PlannedEvent(String name, LocalDate date, double fills) {}
