package org.lowfirst.app.paper;

import java.time.Instant;
import org.lowfirst.app.journal.Head;

/**
 * What every paper says of itself.
 *
 * @param bench name of the bench
 * @param printedAt when it was made
 * @param head newest entry of the journal it was made from
 */
public record Heading(String bench, Instant printedAt, Head head) {}
