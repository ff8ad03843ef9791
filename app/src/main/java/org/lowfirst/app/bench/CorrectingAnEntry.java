package org.lowfirst.app.bench;

import org.lowfirst.station.BenchId;
import org.lowfirst.station.Fact;

/** Corrects by counter-entry; the corrected entry stays to be seen. */
public interface CorrectingAnEntry {

    /** It never happened. */
    Recording reverse(BenchId bench, long seq, String reason, Submission submission);

    /**
     * Something else of the same kind happened.
     *
     * @param replacement all of what really happened, not only what differs
     * @param submission with {@code effectiveAt} null the replacement keeps the time of the entry it corrects
     */
    Recording replace(BenchId bench, long seq, String reason, Fact replacement, Submission submission);
}
