package org.lowfirst.app.bench;

import java.util.List;
import org.lowfirst.app.journal.Trouble;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Refused;

/** What came of sending something to a bench. */
public sealed interface Recording {

    /**
     * It is in the journal, durably.
     *
     * @param entries what was entered, in order
     * @param repeat true when it had been entered before under this key and nothing was added
     */
    record Recorded(List<Entry> entries, boolean repeat) implements Recording {

        public Recorded {
            entries = List.copyOf(entries);
        }
    }

    /** A rule was broken; nothing was entered. */
    record NotRecorded(Refused refused) implements Recording {}

    /** The database failed; nothing was entered. */
    record NotStored(Trouble trouble) implements Recording {}
}
