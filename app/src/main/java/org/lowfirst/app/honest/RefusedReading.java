package org.lowfirst.app.honest;

import java.time.Instant;
import org.lowfirst.planning.contents.BenchFact;

/**
 * A reading of the journal that could not be used; it stays in the journal as typed.
 *
 * @param at when it was taken
 * @param fact what it came from
 * @param why what is wrong with it
 */
public record RefusedReading(Instant at, BenchFact fact, Problem why) {}
