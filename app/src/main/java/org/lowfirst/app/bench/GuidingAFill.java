package org.lowfirst.app.bench;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.words.Wording;
import org.lowfirst.planning.PlanOutcome;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Command.AbandonFill;
import org.lowfirst.station.Command.Enter;
import org.lowfirst.station.Command.FinishFill;
import org.lowfirst.station.Command.RecordFill;
import org.lowfirst.station.Command.RecordStage;
import org.lowfirst.station.Command.StartFill;
import org.lowfirst.station.Command.StartFillBeside;
import org.lowfirst.station.OpenFill;
import org.lowfirst.station.StandFact.BankChosen;
import org.lowfirst.station.SupplyId;

/** Guides a fill valve by valve and records what happens. Each stage is an entry of its own. */
public final class GuidingAFill {

    private final Recorder recorder;
    private final BenchPlanner planner;
    private final GasCount count;
    private final Wording wording;

    GuidingAFill(Recorder recorder, BenchPlanner planner, GasCount count, Locale locale) {
        this.wording = Wording.of(GuidingAFill.class, locale);
        this.recorder = recorder;
        this.planner = planner;
        this.count = count;
    }

    /** Says which of several banks a fill is made from; to be said before it is begun or recorded. */
    public Recording choose(BenchId bench, BankChosen choice, Submission submission) {
        return recorder.record(bench, new Enter(choice), submission);
    }

    public Recording start(BenchId bench, StartFill command, Submission submission) {
        return recorder.record(bench, command, submission);
    }

    /**
     * Starts a fill, with somebody standing beside the filler when one is named.
     *
     * @param second name of the second person; null for none
     */
    public Recording start(BenchId bench, StartFill command, @Nullable String second, Submission submission) {
        return second == null
                ? start(bench, command, submission)
                : recorder.record(bench, new StartFillBeside(command, submission.author(), second), submission);
    }

    /**
     * What to show now.
     *
     * <p>A position at {@link Phase#OPEN_SUPPLY} without a supply means "whatever comes next": the supply the plan has next, or
     * the end when it has none.
     *
     * @param position where the client stands; null when it does not know, then the guide asks for the valves
     * @throws java.util.NoSuchElementException when there is no such bench
     */
    public Guide guide(BenchId bench, @Nullable Position position) {
        BenchState state = recorder.getState(bench);
        OpenFill fill = state.bench().openFill().orElse(null);
        if (fill == null) {
            return new Guide.NoFill();
        }
        PlanOutcome rest = planner.planRest(state, fill);
        BankNow bank = BankNow.of(
                state,
                state.bench().bankOf(fill.id()),
                fill.bottleNow().temperature().temperature(),
                count);
        ValveBoard board = new ValveBoard(bank, wording);
        return new GuideBook(
                        state, fill, board, rest, supply -> planFrom(state, fill, supply), planner.permitted(), count)
                .guide(position);
    }

    private PlanOutcome planFrom(BenchState state, OpenFill fill, SupplyId supply) {
        return planner.planFrom(state, supply, fill.bottle(), fill.target(), fill.bottleNow());
    }

    /** A reading that differs from the plan is taken as what happened; the guide goes on from it. */
    public Recording recordStage(BenchId bench, RecordStage command, Submission submission) {
        return recorder.record(bench, command, submission);
    }

    public Recording finish(BenchId bench, FinishFill command, Submission submission) {
        return recorder.record(bench, command, submission);
    }

    public Recording abandon(BenchId bench, AbandonFill command, Submission submission) {
        return recorder.record(bench, command, submission);
    }

    /** A whole fill entered afterwards. */
    public Recording recordFill(BenchId bench, RecordFill command, Submission submission) {
        return recorder.record(bench, command, submission);
    }
}
