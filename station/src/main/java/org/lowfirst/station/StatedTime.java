package org.lowfirst.station;

import java.time.Instant;

/** A point in time that somebody stated. */
public record StatedTime(Instant at) implements Stated {}
