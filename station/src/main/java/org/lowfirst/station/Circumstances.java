package org.lowfirst.station;

import java.time.Instant;

/**
 * What a decision needs to know besides the bench and the command.
 *
 * @param now time by the journal's clock
 * @param effectiveAt when it happened, by whoever sends it
 * @param confirmed true when the person has looked again and insists on an unlikely value
 */
public record Circumstances(Instant now, Instant effectiveAt, boolean confirmed) {}
