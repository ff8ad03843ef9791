package org.lowfirst.app.bench;

import org.lowfirst.app.journal.Head;
import org.lowfirst.station.Bench;

/**
 * A bench as its journal leaves it.
 *
 * @param head the journal it was folded from
 * @param last place of the last entry folded; anything before it is late
 */
record BenchState(Bench bench, BankBook book, Head head, Place last) {}
