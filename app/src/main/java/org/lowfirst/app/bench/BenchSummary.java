package org.lowfirst.app.bench;

import org.lowfirst.station.BenchId;

/**
 * A bench in the list of benches.
 *
 * @param demo true for the demo bench, which can be removed as a whole
 */
public record BenchSummary(BenchId id, String name, boolean demo, long entries) {}
