package org.lowfirst.app.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.session.Criterion;
import org.lowfirst.planning.session.SessionBottle;
import org.lowfirst.planning.session.SessionPace;
import org.lowfirst.planning.session.SessionRequest;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Reading;
import org.lowfirst.station.SessionAim;
import org.lowfirst.station.SessionWish;
import org.lowfirst.station.StatedPressure;

/** Puts several bottles and the bank as it stands into the planner's words. Enters nothing. */
public final class PlanningASession {

    private final Recorder recorder;
    private final BenchPlanner planner;

    PlanningASession(Recorder recorder, BenchPlanner planner) {
        this.recorder = recorder;
        this.planner = planner;
    }

    /**
     * What to plan, and under which conditions.
     *
     * @param request the session
     * @param conditions gas, temperatures and hose
     */
    public record Asked(SessionRequest request, Conditions conditions) {}

    /**
     * @param bank name of the bank; empty for the one without a name
     * @param wishes at least one; all is planned at the temperature of the first
     * @throws java.util.NoSuchElementException when there is no such bench or bottle
     */
    public Asked asked(BenchId bench, String bank, SessionAim aim, List<SessionWish> wishes) {
        BenchState state = recorder.getState(bench);
        return asked(planner, state, bank, aim, wishes);
    }

    static Asked asked(BenchPlanner planner, BenchState state, String bank, SessionAim aim, List<SessionWish> wishes) {
        Reading first = wishes.get(0).before();
        List<SessionBottle> bottles =
                wishes.stream().map(wish -> bottle(planner, state, wish)).toList();
        SessionRequest request = new SessionRequest(
                planner.bank(state, bank, first),
                bottles,
                order(aim),
                SessionPace.UNHURRIED,
                state.bench().settings().fullSupply().gauge());
        return new Asked(request, planner.conditions(state.bench().settings(), first));
    }

    private static SessionBottle bottle(BenchPlanner planner, BenchState state, SessionWish wish) {
        @Nullable StatedPressure floor = wish.floor();
        @Nullable GaugePressure least = floor == null ? null : floor.gauge();
        return new SessionBottle(
                planner.toFill(state.bench(), wish.bottle(), wish.target(), wish.before()), wish.priority(), least);
    }

    private static List<Criterion> order(SessionAim aim) {
        return switch (aim) {
            case USUAL -> List.of();
            case GAS -> List.of(Criterion.GAS);
            case CHANGES -> List.of(Criterion.CHANGES);
            case TIME -> List.of(Criterion.TIME);
        };
    }
}
