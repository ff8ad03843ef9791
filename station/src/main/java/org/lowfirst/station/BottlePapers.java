package org.lowfirst.station;

import org.jspecify.annotations.Nullable;
import org.lowfirst.station.rules.PlusEntry;

/**
 * What the gate knows of one bottle. Immutable.
 *
 * @param marking null while nobody has entered it
 * @param plus null when no plus-rating was entered
 * @param setAside refusals taken on for the next fill; null when none are
 * @param fills fills in this journal, partial ones included
 */
public record BottlePapers(
        @Nullable Marking marking,
        @Nullable PlusEntry plus,
        GateChecks checks,
        GateFact.@Nullable RefusalsSetAside setAside,
        int fills) {

    public static final BottlePapers NONE = new BottlePapers(null, null, GateChecks.NONE, null, 0);

    BottlePapers with(Marking entered) {
        return new BottlePapers(entered, plus, checks, setAside, fills);
    }

    BottlePapers withPlus(@Nullable PlusEntry entered) {
        return new BottlePapers(marking, entered, checks, setAside, fills);
    }

    BottlePapers with(GateChecks made) {
        return new BottlePapers(marking, plus, made, setAside, fills);
    }

    BottlePapers settingAside(GateFact.@Nullable RefusalsSetAside taken) {
        return new BottlePapers(marking, plus, checks, taken, fills);
    }

    /** Gas went in: one more fill, and what was inspected before it says nothing about the next. */
    BottlePapers filled() {
        return new BottlePapers(marking, plus, checks.filled(), setAside, fills + 1);
    }
}
