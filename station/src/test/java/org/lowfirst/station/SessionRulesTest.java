package org.lowfirst.station;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A session keeps its plan beside its fills, and several of its fills are open at a time. */
final class SessionRulesTest {

    static final SessionId SESSION = new SessionId("session-1");
    private static final FillId OTHER = new FillId("fill-2");
    private static final BottleId M_04 = new BottleId("m-04");

    static final SessionFact.SessionBegun BEGUN = new SessionFact.SessionBegun(
            SESSION,
            null,
            SessionAim.USUAL,
            List.of(new SessionWish(
                    Larkmoor.FILL, Larkmoor.M_03, Larkmoor.reads("40", 0), Larkmoor.bar("150"), null, 1)));

    static final SessionFact.SessionPlanned PLANNED = new SessionFact.SessionPlanned(
            SESSION,
            List.of(
                    new PlannedStage(Larkmoor.FILL, Larkmoor.A, Larkmoor.bar("60"), false),
                    new PlannedStage(Larkmoor.FILL, Larkmoor.B, Larkmoor.bar("110"), false)));

    private static final SessionFact.SessionBegun OF_TWO = new SessionFact.SessionBegun(
            SESSION,
            null,
            SessionAim.GAS,
            List.of(
                    BEGUN.wishes().get(0),
                    new SessionWish(
                            OTHER, M_04, Larkmoor.reads("20", 0), Larkmoor.bar("150"), Larkmoor.bar("120"), 2)));

    private static final SessionFact.SessionPlanned TURNS = new SessionFact.SessionPlanned(
            SESSION,
            List.of(
                    new PlannedStage(Larkmoor.FILL, Larkmoor.A, Larkmoor.bar("60"), false),
                    new PlannedStage(OTHER, Larkmoor.A, Larkmoor.bar("55"), false),
                    new PlannedStage(Larkmoor.FILL, Larkmoor.B, Larkmoor.bar("110"), false)));

    private static Journal two() {
        return Journal.given(
                new Fact.BottleRegistered(M_04, Larkmoor.bottle("M-04"), Larkmoor.reads("20", 0)), OF_TWO, TURNS);
    }

    private static final Fact FIRST =
            new Fact.FillStarted(Larkmoor.FILL, Larkmoor.M_03, Larkmoor.bar("150"), Larkmoor.reads("41", 5));

    @Test
    void aSecondFillOfTheSessionBeginsWhileTheFirstIsOpen() {
        Journal journal = Markings.given(
                new Fact.BottleRegistered(M_04, Larkmoor.bottle("M-04"), Larkmoor.reads("20", 0)), OF_TWO, TURNS);
        journal.add(new Fact.FillStarted(OTHER, M_04, Larkmoor.bar("150"), Larkmoor.reads("20", 5)));
        Decision decision = journal.when(
                new Command.StartFill(Larkmoor.FILL, Larkmoor.M_03, Larkmoor.bar("150"), Larkmoor.reads("40", 6)));
        assertThat(decision).isInstanceOf(Accepted.class);
    }

    @Test
    void aFillOutsideTheSessionWaits() {
        Decision decision = two().when(new Command.StartFill(
                new FillId("fill-9"), Larkmoor.M_03, Larkmoor.bar("150"), Larkmoor.reads("40", 6)));
        assertThat(decision).isEqualTo(Refused.of(Rule.SESSION_UNDER_WAY, ""));
    }

    @Test
    void aStageDoneIsNoLongerToDoAndWhatItReadIsKeptBesideWhatWasExpected() {
        Journal journal = two();
        journal.add(FIRST);
        journal.add(new Fact.StageRecorded(Larkmoor.FILL, Larkmoor.stage(Larkmoor.A, "57", 8)));
        OpenSession session = journal.bench().sessions().findOpen().orElseThrow();
        assertThat(session.remaining()).isEqualTo(TURNS.stages().subList(1, 3));
        assertThat(session.latest()).isEqualTo(Larkmoor.FILL);
        assertThat(session.since()).hasSize(2);
        assertThat(session.since().get(0).expected()).isEqualTo(Larkmoor.bar("40"));
        assertThat(session.since().get(1).expected()).isEqualTo(Larkmoor.bar("60"));
        journal.add(TURNS);
        assertThat(journal.bench().sessions().findOpen().orElseThrow().since()).isEmpty();
    }

    @Test
    void aFillBrokenOffTakesItsBottleOutOfTheSession() {
        Journal journal = two();
        journal.add(FIRST);
        journal.add(new Fact.FillAbandoned(Larkmoor.FILL, "valve stuck"));
        OpenSession session = journal.bench().sessions().findOpen().orElseThrow();
        assertThat(session.out()).containsEntry(Larkmoor.FILL, "valve stuck");
        assertThat(session.remaining()).containsExactly(TURNS.stages().get(1));
        assertThat(session.latest()).isNull();
    }

    @Test
    void aSessionDoesNotEndWithAFillOpen() {
        Journal journal = two();
        journal.add(FIRST);
        assertThat(journal.when(new Command.Enter(new SessionFact.SessionEnded(SESSION, ""))))
                .isEqualTo(Refused.of(Rule.FILL_ALREADY_OPEN, "M-03"));
    }

    @Test
    void aStageThatIsNotPlannedCannotBeSkipped() {
        assertThat(two().when(new Command.Enter(new SessionFact.StageSkipped(SESSION, OTHER, Larkmoor.B, "no time"))))
                .isEqualTo(Refused.of(Rule.STAGE_NOT_PLANNED, "B"));
    }

    @Test
    void theSameBottleIsNotInASessionTwice() {
        SessionWish wish = BEGUN.wishes().get(0);
        assertThat(Journal.given()
                        .when(new Command.Enter(
                                new SessionFact.SessionBegun(SESSION, null, SessionAim.USUAL, List.of(wish, wish)))))
                .isEqualTo(Refused.of(Rule.BOTTLE_NAMED_TWICE, "M-03"));
    }
}
