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
import org.lowfirst.station.Deciding;
import org.lowfirst.station.FillId;
import org.lowfirst.station.OpenFill;
import org.lowfirst.station.OpenSession;
import org.lowfirst.station.Refused;
import org.lowfirst.station.Rule;
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
        return guide(state, state.bench().openFill().orElse(null), position);
    }

    /** The same for one of several fills that are open. */
    public Guide guide(BenchId bench, FillId fill, @Nullable Position position) {
        BenchState state = recorder.getState(bench);
        return guide(state, state.bench().findOpenFill(fill).orElse(null), position);
    }

    private Guide guide(BenchState state, @Nullable OpenFill fill, @Nullable Position position) {
        if (fill == null) {
            return new Guide.NoFill();
        }
        OpenSession session = state.bench().sessions().findOpen(fill.id()).orElse(null);
        PlanOutcome rest = session == null
                ? planner.planRest(state, fill)
                : planner.planStages(state, fill, session.remaining(fill.id()));
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

    /**
     * The same, unless somebody else has recorded that stage meanwhile.
     *
     * @param number number of the stage in its fill, from 1
     */
    public Recording recordStage(BenchId bench, RecordStage command, int number, Submission submission) {
        return recorder.recordAll(bench, submission, (now, circumstances) -> {
            OpenFill fill =
                    now == null ? null : now.findOpenFill(command.fill()).orElse(null);
            if (now == null || fill == null || fill.stages().size() < number) {
                return Deciding.decide(now, command, circumstances);
            }
            return new Refused(
                    Rule.STAGE_ALREADY_RECORDED,
                    now.getBottle(fill.bottle()).details().name(),
                    fill.stages().get(number - 1).bottleAfter().pressure(),
                    null);
        });
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
