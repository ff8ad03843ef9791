package org.lowfirst.app.bench;

import java.util.List;
import org.lowfirst.station.BenchId;

/** Reads the journal: who, when, what. */
public interface ReadingTheJournal {

    /**
     * Entries by when they happened, newest first.
     *
     * @param skip how many of the newest to leave out
     * @param limit at most so many lines
     */
    List<JournalLine> listLines(BenchId bench, int skip, int limit);

    JournalLine getLine(BenchId bench, long seq);

    long count(BenchId bench);
}
