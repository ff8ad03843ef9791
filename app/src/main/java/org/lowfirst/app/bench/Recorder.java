package org.lowfirst.app.bench;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.journal.Appending;
import org.lowfirst.app.journal.BenchRow;
import org.lowfirst.app.journal.Head;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.JournalUnavailable;
import org.lowfirst.app.journal.NewEntry;
import org.lowfirst.app.journal.StoredEntry;
import org.lowfirst.station.Accepted;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Circumstances;
import org.lowfirst.station.Command;
import org.lowfirst.station.Corrections;
import org.lowfirst.station.Deciding;
import org.lowfirst.station.Decision;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Fact;
import org.lowfirst.station.Origin;
import org.lowfirst.station.Refused;
import org.lowfirst.station.Rule;

/**
 * Records what is sent to a bench: decided on the bench as it stands, appended, and decided again when somebody else appended
 * first. A key that was recorded before gives its first result. Thread-safe.
 */
final class Recorder {

    private final Journal journal;
    private final Clock clock;
    private final GasCount count;
    private final Map<BenchId, LiveBench> benches = new ConcurrentHashMap<>();

    Recorder(Journal journal, Clock clock, GasCount count) {
        this.journal = journal;
        this.clock = clock;
        this.count = count;
    }

    Journal journal() {
        return journal;
    }

    Clock clock() {
        return clock;
    }

    Optional<BenchState> findState(BenchId bench) {
        if (!benches.containsKey(bench) && journal.head(bench).seq() == 0) {
            return Optional.empty();
        }
        return benches.computeIfAbsent(bench, id -> new LiveBench(journal, id, count))
                .findState();
    }

    /** @throws NoSuchElementException when there is no such bench */
    BenchState getState(BenchId bench) {
        return findState(bench).orElseThrow(() -> new NoSuchElementException("There is no bench " + bench + "."));
    }

    Recording record(BenchId bench, Command command, Submission submission) {
        return record(new BenchRow(bench, false), command, submission, 0);
    }

    /** @param place number of the entry whose place the facts take, 0 for their own */
    Recording record(BenchRow bench, Command command, Submission submission, long place) {
        return record(bench, (now, circumstances) -> Deciding.decide(now, command, circumstances), submission, place);
    }

    /** Records whatever is decided on the bench as it stands: all facts or none. */
    Recording recordAll(BenchId bench, Submission submission, Asked asked) {
        return record(new BenchRow(bench, false), asked, submission, 0);
    }

    /** What is asked of a bench, to be decided again on every new state of it. */
    interface Asked {
        Decision decide(@Nullable Bench now, Circumstances circumstances);
    }

    private Recording record(BenchRow bench, Asked asked, Submission submission, long place) {
        try {
            Recording recording = attempt(bench, asked, submission, place);
            while (recording == null) {
                recording = attempt(bench, asked, submission, place);
            }
            return recording;
        } catch (JournalUnavailable e) {
            return new Recording.NotStored(e.trouble());
        }
    }

    /** @return null when somebody else appended first */
    private @Nullable Recording attempt(BenchRow bench, Asked asked, Submission submission, long place) {
        List<StoredEntry> before = journal.listByKey(bench.id(), submission.key());
        if (!before.isEmpty()) {
            return recorded(before, true);
        }
        if (submission.author().isBlank()) {
            return new Recording.NotRecorded(Refused.of(Rule.NAME_EMPTY, "author"));
        }
        BenchState state = findState(bench.id()).orElse(null);
        Bench now = state == null ? null : state.bench();
        Instant clockTime = clock.instant();
        Instant happened = submission.effectiveAt() == null ? clockTime : submission.effectiveAt();
        Decision decision = asked.decide(
                now,
                new Circumstances(clockTime, happened, submission.confirmed(), submission.author(), clock.getZone()));
        if (decision instanceof Refused refused) {
            List<StoredEntry> meanwhile = journal.listByKey(bench.id(), submission.key());
            return meanwhile.isEmpty() ? new Recording.NotRecorded(refused) : recorded(meanwhile, true);
        }
        Origin origin = new Origin(submission.key(), clockTime, earlier(happened, clockTime), submission.author());
        List<Fact> facts = ((Accepted) decision).facts();
        Refused broken = state == null ? null : trial(state, facts, origin, place);
        return broken != null ? new Recording.NotRecorded(broken) : append(bench, state, facts, origin, place);
    }

    private @Nullable Recording append(
            BenchRow bench, @Nullable BenchState state, List<Fact> facts, Origin origin, long place) {
        List<NewEntry> entries =
                facts.stream().map(fact -> new NewEntry(origin, fact, place)).toList();
        Appending appending = journal.append(bench, state == null ? Head.NONE : state.head(), entries);
        if (appending instanceof Appending.Appended appended) {
            return recorded(appended.entries(), false);
        } else if (appending instanceof Appending.Repeated repeated) {
            return recorded(repeated.entries(), true);
        }
        return null;
    }

    /** Whether the journal still makes sense with an entry that does not count last. */
    private @Nullable Refused trial(BenchState state, List<Fact> facts, Origin origin, long place) {
        if (facts.get(0) instanceof Fact.EntryCorrected correction
                && Corrections.of(journal.listCorrections(state.bench().id())).struck(correction.corrected())) {
            return Refused.of(Rule.ENTRY_ALREADY_CORRECTED, Long.toString(correction.corrected()));
        }
        long seq = state.head().seq() + 1;
        Entry supposed = new Entry(state.bench().id(), seq, origin, facts.get(0));
        boolean last = place == 0 && Place.of(supposed, seq).compareTo(state.last()) > 0;
        if (last || !(Replay.with(journal, state.head(), supposed, count) instanceof Replayed.Broken broken)) {
            return null;
        }
        return broken.entry().seq() == seq
                ? broken.why()
                : Refused.of(
                        Rule.LATER_ENTRY_NEEDS_IT, Long.toString(broken.entry().seq()));
    }

    /** What a client's fast clock puts in the future happened now. */
    private static Instant earlier(Instant happened, Instant now) {
        return happened.isAfter(now) ? now : happened;
    }

    private static Recording recorded(List<StoredEntry> stored, boolean repeat) {
        return new Recording.Recorded(stored.stream().map(StoredEntry::entry).toList(), repeat);
    }
}
