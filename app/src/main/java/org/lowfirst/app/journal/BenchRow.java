package org.lowfirst.app.journal;

import org.lowfirst.station.BenchId;

/**
 * A bench in the database.
 *
 * @param demo true for the demo bench, the only one that can be removed
 */
public record BenchRow(BenchId id, boolean demo) {}
