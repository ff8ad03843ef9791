package org.lowfirst.app.bench;

import java.util.Optional;
import org.lowfirst.app.journal.JournalUnavailable;
import org.lowfirst.app.journal.StoredEntry;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Command.Enter;
import org.lowfirst.station.Command.SignEntry;
import org.lowfirst.station.CrewFact;
import org.lowfirst.station.PersonDetails;
import org.lowfirst.station.Refused;
import org.lowfirst.station.Roster;
import org.lowfirst.station.Rule;

/** Keeps the people of a bench, and lets them sign what others entered. */
public final class KeepingPeople {

    private final Recorder recorder;

    KeepingPeople(Recorder recorder) {
        this.recorder = recorder;
    }

    /**
     * Who is at the bench and may do what.
     *
     * @throws java.util.NoSuchElementException when there is no such bench
     */
    public Roster roster(BenchId bench) {
        return recorder.getState(bench).bench().roster();
    }

    /** A person as they are from now on; the name says who. */
    public Recording describe(BenchId bench, PersonDetails person, Submission submission) {
        return recorder.record(bench, new Enter(new CrewFact.PersonDescribed(person)), submission);
    }

    public Recording left(BenchId bench, String person, String reason, Submission submission) {
        return recorder.record(bench, new Enter(new CrewFact.PersonLeft(person, reason)), submission);
    }

    /** The author of the submission has read an entry and stands by it. */
    public Recording sign(BenchId bench, long seq, Submission submission) {
        try {
            Optional<StoredEntry> found = recorder.journal().findEntry(bench, seq);
            return found.isEmpty()
                    ? new Recording.NotRecorded(Refused.of(Rule.ENTRY_UNKNOWN, Long.toString(seq)))
                    : recorder.record(bench, new SignEntry(found.get().entry(), submission.author()), submission);
        } catch (JournalUnavailable e) {
            return new Recording.NotStored(e.trouble());
        }
    }
}
