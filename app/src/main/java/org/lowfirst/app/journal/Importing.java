package org.lowfirst.app.journal;

import java.util.List;
import java.util.Locale;
import org.lowfirst.station.BenchId;

/** What came of importing journals. */
public sealed interface Importing {

    /**
     * Every line was good.
     *
     * @param dryRun true when nothing was written because that was asked for
     */
    record Imported(List<OfBench> benches, boolean dryRun) implements Importing {

        public Imported {
            benches = List.copyOf(benches);
        }
    }

    /**
     * @param added entries that were not here before
     * @param known entries that were here already, the same
     * @param head the head afterwards
     */
    record OfBench(BenchId bench, long added, long known, Head head) {

        /** One sentence for people. */
        public String inWords() {
            return String.format(
                    Locale.ROOT, "%s: %d entries new, %d already here, head %s.", bench, added, known, head.hash());
        }
    }

    /**
     * A line is wrong; nothing was imported.
     *
     * @param line its number, from 1; one past the last when the file ends too early
     * @param column where in the line, from 1; 0 when it is the line as a whole
     * @param what what is wrong and what to do
     * @param text the line itself
     */
    record BadLine(int line, int column, String what, String text) implements Importing {}
}
