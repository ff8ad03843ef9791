package org.lowfirst.app.journal;

import java.time.Instant;
import org.lowfirst.station.Fact;

/**
 * A fact that is told in a file and not yet in a journal.
 *
 * @param place number of the entry whose place it takes when it corrects one; 0 otherwise
 */
public record FactLine(Instant effectiveAt, String author, Fact fact, long place) {}
