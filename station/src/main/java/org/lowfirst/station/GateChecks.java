package org.lowfirst.station;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What somebody looked at or had done. Null: not done, or not since the latest fill where a fill undoes it.
 *
 * @param condition latest answers to the questions of the book
 * @param foundOpen day it came with its valve open, not filled since
 * @param inspectedEmpty day it was inspected and cleaned after being found empty or open, not filled since
 * @param hammerTested day of the latest hammer test
 */
public record GateChecks(
        GateFact.@Nullable ConditionAnswered condition,
        @Nullable LocalDate foundOpen,
        @Nullable LocalDate inspectedEmpty,
        @Nullable LocalDate hammerTested) {

    static final GateChecks NONE = new GateChecks(null, null, null, null);

    GateChecks answered(GateFact.ConditionAnswered answers) {
        return new GateChecks(answers, foundOpen, inspectedEmpty, hammerTested);
    }

    /** An inspection before it was found open says nothing about now. */
    GateChecks open(LocalDate day) {
        return new GateChecks(condition, day, null, hammerTested);
    }

    GateChecks inspected(LocalDate day) {
        return new GateChecks(condition, foundOpen, day, hammerTested);
    }

    GateChecks hammered(LocalDate day) {
        return new GateChecks(condition, foundOpen, inspectedEmpty, day);
    }

    GateChecks filled() {
        return foundOpen == null && inspectedEmpty == null ? this : new GateChecks(condition, null, null, hammerTested);
    }
}
