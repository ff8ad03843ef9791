package org.lowfirst.planning.ahead;

import java.time.LocalDate;

/** A fill of the past, missed ones included: what counts is that the bottle was brought. */
public record FilledOn(LocalDate date, UsualFill fill) {}
