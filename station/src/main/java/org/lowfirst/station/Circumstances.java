package org.lowfirst.station;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;

/**
 * What a decision needs to know besides the bench and the command.
 *
 * @param now time by the journal's clock
 * @param effectiveAt when it happened, by whoever sends it
 * @param confirmed true when the person has looked again and insists on an unlikely value
 * @param author who sends it; empty when nobody said
 * @param zone where the bench stands, which tells what day it is
 */
public record Circumstances(Instant now, Instant effectiveAt, boolean confirmed, String author, ZoneId zone) {

    /** Sent by nobody in particular, with days in UTC. */
    public Circumstances(Instant now, Instant effectiveAt, boolean confirmed) {
        this(now, effectiveAt, confirmed, "", ZoneOffset.UTC);
    }

    /** The day it happened at the bench. */
    public LocalDate day() {
        return LocalDate.ofInstant(effectiveAt, zone);
    }
}
