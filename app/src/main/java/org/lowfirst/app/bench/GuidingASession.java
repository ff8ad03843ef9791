package org.lowfirst.app.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.planning.session.Effort;
import org.lowfirst.planning.session.SessionOutcome;
import org.lowfirst.planning.session.SessionPlan;
import org.lowfirst.planning.session.SessionPlanner;
import org.lowfirst.planning.session.SessionWatch;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Command;
import org.lowfirst.station.Command.Enter;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.FillId;
import org.lowfirst.station.OpenFill;
import org.lowfirst.station.OpenSession;
import org.lowfirst.station.PlannedStage;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Refused;
import org.lowfirst.station.Rule;
import org.lowfirst.station.SessionAim;
import org.lowfirst.station.SessionFact;
import org.lowfirst.station.SessionId;
import org.lowfirst.station.SessionWish;
import org.lowfirst.station.StandFact.BankChosen;
import org.lowfirst.station.SupplyId;

/**
 * Guides a session: says what is next, begins its fills, and plans the rest again when what happened does not fit the plan. The
 * stages of its fills are guided and entered by {@link GuidingAFill}, one at a time.
 */
public final class GuidingASession {

    /** Somebody waits at the bench; the same for the same journal wherever it runs. */
    private static final Effort AGAIN = new Effort(2_000_000, 500);

    private static final int MOST_TURNS = 4;

    private final Recorder recorder;
    private final BenchPlanner planner;
    private final GasCount count;

    GuidingASession(Recorder recorder, BenchPlanner planner, GasCount count) {
        this.recorder = recorder;
        this.planner = planner;
        this.count = count;
    }

    /**
     * Begins a session by a plan that was agreed on.
     *
     * @param bank name of the bank; null for the one that needs no name
     * @param plan made from these wishes
     */
    public Recording begin(
            BenchId bench,
            SessionId session,
            @Nullable String bank,
            SessionAim aim,
            List<SessionWish> wishes,
            SessionPlan plan,
            Submission submission) {
        BenchState state = recorder.getState(bench);
        List<PlannedStage> stages = new FollowedStages(state, count, wishes).of(plan, (fill, supply) -> false);
        return together(
                bench,
                List.of(
                        new Enter(new SessionFact.SessionBegun(session, bank, aim, wishes)),
                        new Enter(new SessionFact.SessionPlanned(session, stages))),
                submission);
    }

    /**
     * The session under way and what is next.
     *
     * @throws java.util.NoSuchElementException when there is no such bench
     */
    public Optional<SessionNow> now(BenchId bench) {
        BenchState state = recorder.getState(bench);
        return state.bench().sessions().findOpen().map(session -> now(state, session));
    }

    private static SessionNow now(BenchState state, OpenSession session) {
        Surprises surprises = new Surprises(state.bench(), session);
        List<Surprise> why = surprises.now();
        SessionNow.Act act = why.isEmpty() ? next(state, session) : new SessionNow.Act.PlanAgain(why);
        return new SessionNow(session, act, surprises.earlier());
    }

    private static SessionNow.Act next(BenchState state, OpenSession session) {
        OpenFill done = finishable(state, session);
        if (done != null) {
            return new SessionNow.Act.Finish(done);
        }
        PlannedStage stage = session.next().orElse(null);
        if (stage == null) {
            return new SessionNow.Act.End();
        }
        return state.bench()
                .findOpenFill(stage.fill())
                .<SessionNow.Act>map(fill -> new SessionNow.Act.GoOn(fill, stage))
                .orElseGet(() ->
                        new SessionNow.Act.Begin(session.findWish(stage.fill()).orElseThrow(), stage));
    }

    /** A bottle that gets no more, the one on the hose first. */
    private static @Nullable OpenFill finishable(BenchState state, OpenSession session) {
        OpenFill onHose = state.bench().openFill().orElse(null);
        if (onHose != null && session.remaining(onHose.id()).isEmpty()) {
            return onHose;
        }
        return state.bench().openFills().values().stream()
                .filter(fill -> session.remaining(fill.id()).isEmpty())
                .findFirst()
                .orElse(null);
    }

    /**
     * Begins the fill of a bottle when it is put on the hose.
     *
     * @param before what its gauge shows then
     * @param second who stands beside; null for nobody
     */
    public Recording startBottle(
            BenchId bench, FillId fill, Reading before, @Nullable String second, Submission submission) {
        BenchState state = recorder.getState(bench);
        OpenSession session = state.bench().sessions().findOpen(fill).orElse(null);
        if (session == null) {
            return repeatOr(bench, submission, Refused.of(Rule.SESSION_UNKNOWN, ""));
        }
        SessionWish wish = session.findWish(fill).orElseThrow();
        List<Command> commands = new ArrayList<>();
        if (state.bench().bankNames().size() > 1) {
            commands.add(new Enter(new BankChosen(fill, session.bank())));
        }
        Command.StartFill start = new Command.StartFill(fill, wish.bottle(), wish.target(), before);
        commands.add(second == null ? start : new Command.StartFillBeside(start, submission.author(), second));
        return together(bench, commands, submission);
    }

    /** A stage of the plan is not done. */
    public Recording skip(BenchId bench, SessionFact.StageSkipped skipped, Submission submission) {
        return recorder.record(bench, new Enter(skipped), submission);
    }

    /** A bottle is not filled, or not filled further. */
    public Recording leaveOut(BenchId bench, FillId fill, String reason, Submission submission) {
        BenchState state = recorder.getState(bench);
        OpenSession session = state.bench().sessions().open();
        if (state.bench().findOpenFill(fill).isPresent()) {
            return recorder.record(bench, new Command.AbandonFill(fill, reason), submission);
        }
        return session == null
                ? repeatOr(bench, submission, Refused.of(Rule.SESSION_UNKNOWN, ""))
                : recorder.record(
                        bench, new Enter(new SessionFact.BottleLeftOut(session.id(), fill, reason)), submission);
    }

    /**
     * Ends a session before all is done. A bottle that is ready by its last reading is finished with it; what of others was
     * recorded stands, and their fills are broken off.
     */
    public Recording end(BenchId bench, SessionId id, String reason, Submission submission) {
        return recorder.recordAll(bench, submission, (now, circumstances) -> {
            OpenSession session = now == null ? null : now.sessions().open();
            if (now == null || session == null || !session.id().equals(id)) {
                return Refused.of(Rule.SESSION_UNKNOWN, id.value());
            }
            if (reason.isBlank()) {
                return Refused.of(Rule.REASON_EMPTY, "");
            }
            List<List<Command>> rows = new ArrayList<>();
            for (OpenFill fill : now.openFills().values()) {
                boolean ready = !fill.stages().isEmpty()
                        && session.findWish(fill.id())
                                .map(wish -> wish.floor() == null ? wish.target() : wish.floor())
                                .filter(least -> fill.bottleNow().pressure().compareTo(least) >= 0)
                                .isPresent();
                rows.add(List.of(
                        ready
                                ? new Command.FinishFill(fill.id(), fill.bottleNow())
                                : new Command.AbandonFill(fill.id(), reason)));
            }
            rows.add(List.of(new Enter(new SessionFact.SessionEnded(id, reason))));
            return Batch.decide(now, rows, circumstances);
        });
    }

    /**
     * Plans the rest again when what happened does not fit the plan, and ends the session when nothing is left. To be called
     * after everything that is entered of it; called twice it does nothing the second time.
     *
     * @return why it was planned again; empty when it was not
     */
    public List<Surprise> keepUp(BenchId bench, Submission submission) {
        List<Surprise> why = List.of();
        for (int turn = 0; turn < MOST_TURNS; turn++) {
            BenchState state = recorder.getState(bench);
            OpenSession session = state.bench().sessions().open();
            if (session == null) {
                return why;
            }
            List<Surprise> now = new Surprises(state.bench(), session).now();
            if (!now.isEmpty()) {
                why = now;
                enterStill(bench, session, planned(state, session), part(submission, "plan" + turn));
            } else if (session.remaining().isEmpty()
                    && state.bench().openFills().isEmpty()) {
                SessionFact end = new SessionFact.SessionEnded(session.id(), "");
                enterStill(bench, session, end, part(submission, "end" + turn));
            } else {
                return why;
            }
        }
        return why;
    }

    /** Enters it if the session still stands as it did. */
    private void enterStill(BenchId bench, OpenSession session, SessionFact fact, Submission submission) {
        recorder.recordAll(
                bench,
                submission,
                (now, circumstances) -> now != null
                                && now.sessions()
                                        .findOpen()
                                        .filter(session::equals)
                                        .isPresent()
                        ? Batch.decide(now, List.of(List.of(new Enter(fact))), circumstances)
                        : Refused.of(Rule.SESSION_UNKNOWN, session.id().value()));
    }

    private SessionFact planned(BenchState state, OpenSession session) {
        List<SessionWish> wanted = new SessionRest(state, session).wishes();
        if (wanted.isEmpty()) {
            return new SessionFact.SessionPlanned(session.id(), List.of());
        }
        String bank = session.bank();
        PlanningASession.Asked asked =
                PlanningASession.asked(planner, state, bank == null ? "" : bank, session.aim(), wanted);
        SessionOutcome outcome =
                SessionPlanner.under(asked.conditions()).plan(asked.request(), AGAIN, SessionWatch.PATIENT);
        SessionRest rest = new SessionRest(state, session);
        List<PlannedStage> stages = outcome instanceof SessionPlan plan
                ? new FollowedStages(state, count, wanted).of(plan, (fill, supply) -> rest.leftOut(fill, supply.id()))
                : List.of();
        return new SessionFact.SessionPlanned(session.id(), stages);
    }

    private Recording together(BenchId bench, List<Command> commands, Submission submission) {
        return recorder.recordAll(
                bench,
                submission,
                (now, circumstances) -> now == null
                        ? Refused.of(Rule.BENCH_NOT_OPEN, "")
                        : Batch.decide(now, List.of(commands), circumstances));
    }

    /** What was entered under this key before, or the refusal. */
    private Recording repeatOr(BenchId bench, Submission submission, Refused refused) {
        return recorder.recordAll(bench, submission, (now, circumstances) -> refused);
    }

    private static Submission part(Submission submission, String part) {
        return new Submission(new EntryKey(submission.key().value() + "." + part), submission.author(), null, false);
    }

    /** Whether the next stage of a fill may begin now: it is this fill's turn, and on this supply. */
    static Optional<SupplyId> turn(OpenSession session, FillId fill) {
        return session.next().filter(stage -> stage.fill().equals(fill)).map(PlannedStage::supply);
    }
}
