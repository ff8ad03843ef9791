package org.lowfirst.app.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.StoredEntry;
import org.lowfirst.app.paper.FillRecord.Ending;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Corrections;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Fact;
import org.lowfirst.station.FillId;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Stage;
import org.lowfirst.station.StatedPressure;

/** One fill followed through the journal, as it counts after all corrections. */
final class FillStory {

    private final List<Long> entries = new ArrayList<>();
    private final List<Stage> stages = new ArrayList<>();
    private @Nullable BottleId bottle;
    private @Nullable StatedPressure target;
    private @Nullable Reading before;
    private @Nullable Reading after;
    private Ending ending = Ending.OPEN;

    private FillStory() {}

    /**
     * @param seq number of any entry of the fill
     * @return nothing when the entry is not about a fill, or the fill was taken back
     * @throws NoSuchElementException when there is no such entry
     */
    static Optional<FillStory> find(Journal journal, BenchId bench, long seq) {
        return findFill(journal, bench, seq)
                .map(fill -> follow(journal, bench, fill))
                .filter(story -> story.bottle != null);
    }

    /** @return nothing when there is no such fill, or it was taken back */
    static Optional<FillStory> find(Journal journal, BenchId bench, FillId fill) {
        return Optional.of(follow(journal, bench, fill)).filter(story -> story.bottle != null);
    }

    private static Optional<FillId> findFill(Journal journal, BenchId bench, long seq) {
        Entry entry = journal.findEntry(bench, seq)
                .map(StoredEntry::entry)
                .orElseThrow(() -> new NoSuchElementException("There is no entry " + seq + "."));
        return entry.fact() instanceof Fact.EntryCorrected correction
                ? findFill(journal, bench, correction.corrected())
                : Optional.ofNullable(fillOf(entry.fact()));
    }

    private static FillStory follow(Journal journal, BenchId bench, FillId fill) {
        Corrections corrections = Corrections.of(journal.listCorrections(bench));
        return journal.inPlaceOrder(bench, entries -> {
            FillStory story = new FillStory();
            entries.forEachRemaining(entry -> {
                if (!corrections.struck(entry.seq())) {
                    Corrections.counting(entry)
                            .filter(counting -> fill.equals(fillOf(counting.fact())))
                            .ifPresent(story::take);
                }
            });
            return story;
        });
    }

    private void take(Entry entry) {
        entries.add(entry.seq());
        Fact fact = entry.fact();
        if (fact instanceof Fact.FillStarted started) {
            bottle = started.bottle();
            target = started.target();
            before = started.before();
        } else if (fact instanceof Fact.StageRecorded recorded) {
            stages.add(recorded.stage());
        } else if (fact instanceof Fact.FillFinished finished) {
            after = finished.after();
            ending = Ending.FINISHED;
        } else if (fact instanceof Fact.FillAbandoned) {
            ending = Ending.ABANDONED;
        } else if (fact instanceof Fact.FillRecorded recorded) {
            bottle = recorded.bottle();
            target = recorded.target();
            before = recorded.before();
            after = recorded.after();
            stages.addAll(recorded.stages());
            ending = Ending.FINISHED;
        }
    }

    private static @Nullable FillId fillOf(Fact fact) {
        if (fact instanceof Fact.FillStarted f) {
            return f.fill();
        } else if (fact instanceof Fact.StageRecorded f) {
            return f.fill();
        } else if (fact instanceof Fact.FillFinished f) {
            return f.fill();
        } else if (fact instanceof Fact.FillAbandoned f) {
            return f.fill();
        } else if (fact instanceof Fact.FillRecorded f) {
            return f.fill();
        }
        return null;
    }

    BottleId bottle() {
        return told(bottle);
    }

    @Nullable
    StatedPressure target() {
        return target;
    }

    Reading before() {
        return told(before);
    }

    @Nullable
    Reading after() {
        return after;
    }

    Ending ending() {
        return ending;
    }

    List<Stage> stages() {
        return stages;
    }

    /** Numbers of the entries that tell it. */
    List<Long> entries() {
        return entries;
    }

    private static <T> T told(@Nullable T value) {
        if (value == null) {
            throw new IllegalStateException("The fill was never begun.");
        }
        return value;
    }
}
