package org.lowfirst.planning.ahead;

import java.time.LocalDate;

/** Fills still in the bank on the morning of a day, if nothing is exchanged. */
public record DayAhead(LocalDate date, Band fillsLeft) {}
