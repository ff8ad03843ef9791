package org.lowfirst.app.bench;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Circumstances;
import org.lowfirst.station.Command;
import org.lowfirst.station.Refused;
import org.lowfirst.station.Rule;

/** Enters the bottles of a table, all of them or none. */
public final class EnteringManyBottles {

    private final Recorder recorder;

    EnteringManyBottles(Recorder recorder) {
        this.recorder = recorder;
    }

    /**
     * What would come of it: for each row the first rule it breaks, decided as if the rows before it that break none were
     * entered.
     *
     * @param rows what each row of the table asks for, in order
     * @throws java.util.NoSuchElementException when there is no such bench
     */
    public List<Optional<Refused>> check(BenchId bench, List<List<Command>> rows, Submission submission) {
        Clock clock = recorder.clock();
        Instant now = clock.instant();
        return Batch.check(
                recorder.getState(bench).bench(),
                rows,
                new Circumstances(now, now, submission.confirmed(), submission.author(), clock.getZone()));
    }

    /** Enters all rows as one; nothing is entered when one of them breaks a rule, or when they ask for nothing. */
    public Recording enter(BenchId bench, List<List<Command>> rows, Submission submission) {
        if (rows.stream().allMatch(List::isEmpty)) {
            return new Recording.Recorded(List.of(), false);
        }
        return recorder.recordAll(
                bench,
                submission,
                (now, circumstances) -> now == null
                        ? Refused.of(Rule.BENCH_NOT_OPEN, bench.value())
                        : Batch.decide(now, rows, circumstances));
    }
}
