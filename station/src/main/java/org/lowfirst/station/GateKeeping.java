package org.lowfirst.station;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.station.rules.Advice;
import org.lowfirst.station.rules.Finding;
import org.lowfirst.station.rules.Judgement;
import org.lowfirst.station.rules.OverridePolicy;

/** What the gate lets begin, and which refusals it lets be set aside. */
final class GateKeeping {

    private GateKeeping() {}

    /** No fill begins on a bottle the book in force refuses that day, unless all of it was set aside. */
    static @Nullable Refused start(Bench bench, Fact.FillStarted start, Circumstances circumstances) {
        BottleId id = start.bottle();
        Judgement judgement =
                Judging.judge(bench, id, start.before().pressure().gauge(), circumstances.day(), List.of());
        return Judging.standing(bench, id, judgement).isEmpty()
                ? null
                : Refused.of(Rule.BOTTLE_UNFIT, bench.getBottle(id).details().name());
    }

    /** All that is refused is set aside, or nothing; some refusals stand whoever asks. */
    static @Nullable Refused setAside(Bench bench, GateFact.RefusalsSetAside wish) {
        Reading latest = bench.getBottle(wish.bottle()).latest();
        GaugePressure reading = latest == null ? null : latest.pressure().gauge();
        List<Finding> refusals = Judging.judge(bench, wish.bottle(), reading, wish.day(), List.of())
                .refusals();
        String name = bench.getBottle(wish.bottle()).details().name();
        boolean never = refusals.stream()
                .anyMatch(finding ->
                        finding.override() == OverridePolicy.NEVER && finding.advice() != Advice.TAKE_READING);
        if (never) {
            return Refused.of(Rule.NEVER_SET_ASIDE, name);
        }
        boolean refused = refusals.stream().map(Refusal::of).toList().containsAll(wish.refusals());
        if (!refused) {
            return Refused.of(Rule.NOTHING_TO_SET_ASIDE, name);
        }
        return bench.roster().maySetAside(wish.second(), wish.filler())
                ? null
                : Refused.of(Rule.NOT_RESPONSIBLE, wish.second());
    }
}
