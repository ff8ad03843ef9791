package org.lowfirst.planning.session;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lowfirst.planning.session.Sessions.bottle;
import static org.lowfirst.planning.session.Sessions.supply;
import static org.lowfirst.planning.session.Sessions.withFloor;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.Cap;
import org.lowfirst.planning.PlanRefused;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.SupplyState;

final class SessionPlannerTest {

    private static final List<SupplyState> BANK =
            List.of(supply("A", 50, 62), supply("B", 50, 118), supply("C", 50, 165));

    private final SessionPlanner planner = Sessions.oxygen();

    @Test
    void oneBottleIsFilledLowestFirst() {
        SessionPlan plan = Sessions.plan(planner, new SessionRequest(BANK, List.of(bottle("R1", 5, 40, 150))));
        assertThat(plan.course().steps()).extracting(SessionStep::supply).containsExactly("A", "B", "C");
        assertThat(plan.course().ends().get(0).readiness()).isEqualTo(Readiness.FULL);
        assertThat(plan.score().changes()).isEqualTo(4);
        assertThat(plan.notes(ShownUnits.METRIC)).noneMatch(note -> note.contains("in rare cases"));
    }

    @Test
    void aBankThatCannotFillAllSaysWhatWouldHelp() {
        List<SessionBottle> bottles = List.of(
                bottle("R1", 10, 20, 150),
                bottle("R2", 10, 90, 150),
                bottle("R3", 10, 60, 150),
                bottle("R4", 5, 10, 150));
        SessionPlan plan = Sessions.plan(
                planner, new SessionRequest(BANK, bottles, List.of(), SessionPace.UNHURRIED, GaugePressure.ofBar(200)));
        assertThat(plan.score().ready()).isLessThan(4);
        MoreReady more = requireNonNull(plan.advice().moreReady());
        assertThat(more.exchanges())
                .first()
                .satisfies(e -> assertThat(e.ready()).isEqualTo(4));
        GaugePressure floor = requireNonNull(more.commonFloor());
        List<SessionBottle> lower = bottles.stream()
                .map(b -> new SessionBottle(b.bottle().withTarget(new GaugePressure(floor.pascals() - 1))))
                .toList();
        assertThat(Sessions.plan(planner, new SessionRequest(BANK, lower))
                        .score()
                        .ready())
                .isEqualTo(4);
        assertThat(plan.notes(ShownUnits.METRIC))
                .anyMatch(note -> note.startsWith("With a floor of "))
                .anyMatch(note -> note.startsWith("A whole stage ends when"))
                .anyMatch(note -> note.startsWith("A full supply in the place of "))
                .first()
                .asString()
                .contains(" of 4 bottles end ready; no plan of whole stages makes more ready, and ");
    }

    @Test
    void fewerChangesFirstAsksForNoMoreChangesThanGasFirst() {
        for (long seed = 0; seed < 30; seed++) {
            SessionRequest drawn = Sessions.random(seed, 3, 4, true, true, 0.6);
            SessionPlan gas = Sessions.plan(planner, drawn);
            SessionPlan changes = Sessions.plan(
                    planner,
                    new SessionRequest(
                            drawn.supplies(),
                            drawn.bottles(),
                            List.of(Criterion.CHANGES),
                            SessionPace.UNHURRIED,
                            null));
            assertThat(changes.score().ready()).isEqualTo(gas.score().ready());
            assertThat(changes.score().changes())
                    .isLessThanOrEqualTo(gas.score().changes());
            assertThat(changes.score().gasLeft().moles())
                    .isLessThanOrEqualTo(gas.score().gasLeft().moles()
                            + gas.proof().gasStep().moles());
        }
    }

    @Test
    void lessTimeFirstTakesNoLongerThanFewerChangesFirstOnTheSameStages() {
        SessionRequest drawn = Sessions.random(3, 3, 4, true, true, 0.6);
        SessionPlan changes = Sessions.plan(planner, drawn);
        SessionPlan time = Sessions.plan(
                planner,
                new SessionRequest(
                        drawn.supplies(),
                        drawn.bottles(),
                        List.of(Criterion.PRIORITY, Criterion.WISH, Criterion.GAS, Criterion.TIME, Criterion.CHANGES),
                        SessionPace.UNHURRIED,
                        null));
        assertThat(time.score().time_s()).isLessThanOrEqualTo(changes.score().time_s());
    }

    @Test
    void aSupplyHeldBackIsNotOpenedAndKeepsItsPlaceInTheBank() {
        List<SupplyState> bank = new ArrayList<>(BANK);
        bank.set(1, bank.get(1).holdBack());
        SessionPlan plan = Sessions.plan(planner, new SessionRequest(bank, List.of(bottle("R1", 5, 40, 150))));
        assertThat(plan.course().steps()).extracting(SessionStep::supply).containsExactly("A", "C");
        assertThat(plan.course().bankAfter()).extracting(s -> s.name()).containsExactly("A", "B", "C");
    }

    @Test
    void aBottleThatNeedsNothingIsReadyWithoutAStage() {
        SessionPlan plan = Sessions.plan(
                planner, new SessionRequest(BANK, List.of(bottle("R1", 5, 150, 150), bottle("R2", 2, 100, 150))));
        assertThat(plan.score().ready()).isEqualTo(2);
        assertThat(plan.course().steps()).extracting(SessionStep::bottle).containsOnly("R2");
    }

    @Test
    void aBottleAboveItsFloorIsReadyAndFullOnlyIfTheBankAllows() {
        SessionBottle almost = withFloor(bottle("R1", 5, 120, 190), 1, 100);
        SessionPlan plan = Sessions.plan(planner, new SessionRequest(BANK, List.of(almost)));
        assertThat(plan.score().ready()).isEqualTo(1);
        assertThat(plan.course().ends().get(0).readiness()).isEqualTo(Readiness.AT_FLOOR);
        assertThat(plan.course().steps()).isEmpty();
    }

    @Test
    void aCappedWishIsTheStop() {
        SessionBottle tooHigh = new SessionBottle(new org.lowfirst.planning.BottleToFill(
                "R1",
                org.lowfirst.gas.Volume.ofLitres(2),
                GaugePressure.ofBar(20),
                GaugePressure.ofBar(150),
                GaugePressure.ofBar(124)));
        SessionPlan plan = Sessions.plan(planner, new SessionRequest(BANK, List.of(tooHigh)));
        assertThat(plan.course().ends().get(0).stop().toBar()).isEqualTo(124, within(1e-9));
        assertThat(plan.course().ends().get(0).cap()).isEqualTo(Cap.SERVICE_PRESSURE);
        assertThat(plan.course().ends().get(0).reading().toBar()).isEqualTo(124, within(1e-9));
    }

    @Test
    void noBottlesMakeAnEmptyPlan() {
        SessionPlan plan = Sessions.plan(planner, new SessionRequest(BANK, List.of()));
        assertThat(plan.course().steps()).isEmpty();
        assertThat(plan.score().ready()).isZero();
        assertThat(plan.advice().moreReady()).isNull();
    }

    @Test
    void aStoppedSearchGivesTheBestSoFar() {
        SessionRequest request = Sessions.random(0, 4, 6, true, true, 1.0);
        SessionOutcome outcome = planner.plan(request, Effort.USUAL, soFar -> false);
        assertThat(outcome).isInstanceOf(SessionPlan.class);
        SessionPlan stopped = (SessionPlan) outcome;
        assertThat(stopped.score().ready()).isEqualTo(6);
        assertThat(stopped.proof().nodes()).isLessThan(Effort.USUAL.nodes() / 2);
    }

    @Test
    void theWatcherSeesHowItGetsOn() {
        List<SessionWatch.SoFar> seen = Collections.synchronizedList(new ArrayList<>());
        planner.plan(Sessions.random(0, 4, 6, true, true, 1.0), Effort.USUAL, soFar -> {
            seen.add(soFar);
            return true;
        });
        assertThat(seen).isNotEmpty();
        assertThat(seen).extracting(SessionWatch.SoFar::nodes).isSorted();
        assertThat(seen.get(seen.size() - 1).ready()).isEqualTo(6);
    }

    @Test
    void refusalsAreThoseOfASingleFillAndAFloorAboveTheStop() {
        assertThat(planner.plan(new SessionRequest(List.of(), List.of(bottle("R1", 5, 40, 150)))))
                .isEqualTo(new SessionRefused(new PlanRefused.EmptyBank()));
        assertThat(planner.plan(new SessionRequest(BANK, List.of(bottle("R1", 5, 40, 150), bottle("R1", 5, 40, 150)))))
                .isEqualTo(new SessionRefused(new PlanRefused.DuplicateName("bottle", "R1")));
        SessionOutcome floor =
                planner.plan(new SessionRequest(BANK, List.of(withFloor(bottle("R1", 5, 40, 150), 1, 160))));
        assertThat(floor).isInstanceOf(SessionRefused.class);
        assertThat(((SessionRefused) floor).why().inWords(ShownUnits.METRIC))
                .isEqualTo("The floor of bottle R1 (160 bar) is above its stop of 150 bar."
                        + " Please lower the floor or raise the target.");
    }

    @Test
    void reasonsHoldWhenTried() {
        SessionPlan plan = Sessions.plan(planner, Sessions.random(3, 4, 6, true, true, 1.0));
        assertThat(plan.advice().reasons()).isNotEmpty();
        assertThat(plan.advice().reasons()).allSatisfy(reason -> {
            assertThat(reason.first()).isNotEqualTo(reason.second());
            boolean worse = reason.wouldMiss() != null || reason.gasLost().moles() > 0 || reason.changesLost() > 0;
            assertThat(worse).isTrue();
        });
    }
}
