package org.lowfirst.app.bench;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.words.Wording;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Corrections;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Fact;
import org.lowfirst.station.Judging;
import org.lowfirst.station.Reading;
import org.lowfirst.station.rules.Advice;

/**
 * Flags fills that happened though the bottle was not to be filled. What happened is never refused; it is judged by the marking
 * and the rule book as they are known now, on the day of the fill. What has to do with the day alone (how it looked, what it
 * read) is left out: nobody can know it afterwards.
 */
final class UnfitFills {

    private static final Set<Advice> PAST_DUE = Set.of(Advice.USE_UP_THEN_RETEST, Advice.RETEST_BEFORE_FILLING);

    private final Recorder recorder;
    private final Wording wording;

    UnfitFills(Recorder recorder, Wording wording) {
        this.recorder = recorder;
        this.wording = wording;
    }

    /** One sentence, or null when nothing is to be said. */
    @Nullable
    String note(Entry entry) {
        Fact fact = Corrections.counting(entry).map(Entry::fact).orElse(null);
        if (fact instanceof Fact.FillRecorded f) {
            return note(f.bottle(), f.before(), entry);
        }
        return fact instanceof Fact.FillStarted f ? note(f.bottle(), f.before(), entry) : null;
    }

    private @Nullable String note(BottleId bottle, Reading before, Entry entry) {
        Bench bench = recorder.getState(entry.bench()).bench();
        if (bench.findBottle(bottle).isEmpty()) {
            return null;
        }
        String name = bench.getBottle(bottle).details().name();
        if (bench.areas().gate().papersOf(bottle).marking() == null) {
            return wording.text("note.not-marked", Map.of("bottle", name));
        }
        LocalDate day = LocalDate.ofInstant(
                entry.origin().effectiveAt(), recorder.clock().getZone());
        List<Advice> advice =
                Judging.judge(bench, bottle, before.pressure().gauge(), day, List.of()).refusals().stream()
                        .map(finding -> finding.advice())
                        .toList();
        if (advice.contains(Advice.RETIRE_LIFE_OVER)) {
            return wording.text("note.life-over", Map.of("bottle", name));
        }
        return advice.stream().anyMatch(PAST_DUE::contains)
                ? wording.text("note.past-due", Map.of("bottle", name))
                : null;
    }
}
