package org.lowfirst.planning;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;

/**
 * The plan for one bottle.
 *
 * @param request what was asked
 * @param stop where the valve is shut
 * @param fill the stages
 * @param fillsLeft such fills from the bank as this bottle finds it, this one included, lowest first
 * @param fullestFirst the same with the fullest supply always first
 * @param remedies what would make it finish; null when it finishes
 */
public record FillPlan(
        FillRequest request,
        StopReading stop,
        Fill fill,
        FillsLeft fillsLeft,
        HabitComparison fullestFirst,
        @Nullable Remedies remedies)
        implements PlanOutcome {

    /** Whether the bottle comes to its stop. */
    public boolean reaches() {
        return fill.reaches();
    }

    /** How far below its stop the bottle ends; null when it reaches it. */
    public @Nullable GaugePressure shortBy() {
        return reaches()
                ? null
                : new GaugePressure(
                        stop.reading().pascals() - fill.finalReading().pascals());
    }

    /** What a person should know about this plan, in full sentences; may be empty. */
    public List<String> notes(ShownUnits units) {
        return new PlanSentences(this, units).notes();
    }
}
