package org.lowfirst.app.bench;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.journal.BenchRow;
import org.lowfirst.app.journal.JournalUnavailable;
import org.lowfirst.app.journal.StoredEntry;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Command.CorrectEntry;
import org.lowfirst.station.Corrections;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Fact;
import org.lowfirst.station.Refused;
import org.lowfirst.station.Rule;

/** Corrects by counter-entry; the corrected entry stays to be seen. */
public final class CorrectingAnEntry {

    private final Recorder recorder;

    CorrectingAnEntry(Recorder recorder) {
        this.recorder = recorder;
    }

    /** It never happened. */
    public Recording reverse(BenchId bench, long seq, String reason, Submission submission) {
        return correct(bench, seq, reason, null, submission);
    }

    /**
     * Something else of the same kind happened.
     *
     * @param replacement all of what really happened, not only what differs
     * @param submission with {@code effectiveAt} null the replacement keeps the time of the entry it corrects
     */
    public Recording replace(BenchId bench, long seq, String reason, Fact replacement, Submission submission) {
        return correct(bench, seq, reason, replacement, submission);
    }

    private Recording correct(
            BenchId bench, long seq, String reason, @Nullable Fact replacement, Submission submission) {
        try {
            Optional<StoredEntry> found = recorder.journal().findEntry(bench, seq);
            if (found.isEmpty()) {
                return refused(Rule.ENTRY_UNKNOWN, seq);
            }
            Corrections corrections = Corrections.of(recorder.journal().listCorrections(bench));
            Entry entry = found.get().entry();
            Submission placed = submission.effectiveAt() != null
                    ? submission
                    : new Submission(
                            submission.key(),
                            submission.author(),
                            entry.origin().effectiveAt(),
                            submission.confirmed());
            return recorder.record(
                    new BenchRow(bench, false),
                    new CorrectEntry(entry, reason, replacement),
                    placed,
                    corrections.place(seq));
        } catch (JournalUnavailable e) {
            return new Recording.NotStored(e.trouble());
        }
    }

    private static Recording refused(Rule rule, long seq) {
        return new Recording.NotRecorded(Refused.of(rule, Long.toString(seq)));
    }
}
