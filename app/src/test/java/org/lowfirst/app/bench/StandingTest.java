package org.lowfirst.app.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.SkipReason;
import org.lowfirst.planning.Skipped;
import org.lowfirst.planning.Step;
import org.lowfirst.planning.SupplyState;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command.FinishFill;
import org.lowfirst.station.Command.RecordFill;
import org.lowfirst.station.Command.RecordStage;
import org.lowfirst.station.Command.StartFill;
import org.lowfirst.station.FillId;
import org.lowfirst.station.Stage;
import org.lowfirst.station.StandFact;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.Turn;

/** Plans, guide and book heed how supplies stand. 20 C, supplies of 50 L at 62, 118 and 190 bar, a bottle of 5 L at 40 bar. */
class StandingTest {

    private static final FillId FILL = new FillId("fill-1");

    @TempDir
    private Path directory;

    private Station station;
    private SupplyId a;
    private SupplyId b;
    private SupplyId c;
    private BottleId bottle;

    @BeforeEach
    void open() {
        station = Station.at(directory, "20");
        a = station.supply("A", "62");
        b = station.supply("B", "118");
        c = station.supply("C", "190");
        bottle = station.bottle("M-03", "5", "40");
    }

    @AfterEach
    void close() {
        station.close();
    }

    @Test
    void oneHeldBackIsLeftOutAndKeepsItsRank() {
        say(new StandFact.SupplyHeldBack(b, "for the squad"));
        FillPlan plan = plan("");
        assertThat(order(plan)).containsExactly("A", "C");
        assertThat(plan.fill().skipped().get(0))
                .extracting(Skipped::rank, Skipped::reason)
                .containsExactly(2, SkipReason.HELD_BACK);
        SupplyView view = view(b);
        assertThat(view.rank()).isEqualTo(2);
        assertThat(view.standing().turn()).isEqualTo(Turn.HELD_BACK);
        assertThat(view.standing().reason()).isEqualTo("for the squad");
    }

    @Test
    void fillsLeftCountOnlyWhatMayBeOpened() {
        int all = plan("").fillsLeft().complete();
        say(new StandFact.SupplyTaggedOut(c, "valve leaks"));
        assertThat(plan("").fillsLeft().complete()).isZero();
        say(new StandFact.SupplyReleased(c));
        assertThat(plan("").fillsLeft().complete()).isEqualTo(all);
    }

    @Test
    void oneUsedFirstGoesBeforeLowerRanks() {
        say(new StandFact.SupplyPutFirst(b));
        assertThat(order(plan(""))).containsExactly("B", "C");
    }

    @Test
    void theWeeksAheadOpenThemInTheSameOrder() {
        say(new StandFact.SupplyPutFirst(c));
        say(new StandFact.SupplyHeldBack(a, "for the squad"));
        assertThat(station.benches.askingAhead().today(Station.BENCH, null).bank())
                .extracting(SupplyState::name, SupplyState::turn)
                .containsExactly(
                        tuple("B", org.lowfirst.planning.Turn.BY_RANK), tuple("C", org.lowfirst.planning.Turn.FIRST));
    }

    @Test
    void theGuideOpensNoSupplyThatIsTaggedOut() {
        station.recorded(guide().start(
                        Station.BENCH,
                        new StartFill(FILL, bottle, Station.bar("150"), station.reads("40")),
                        station.submission()));
        say(new StandFact.SupplyTaggedOut(a, "valve leaks"));
        assertThat(at(Phase.OPEN_SUPPLY, a).supply())
                .extracting(supply -> supply.id())
                .isEqualTo(b);
        assertThat(at(Phase.WATCH, a).position().phase()).isEqualTo(Phase.SHUT_TRANSFER);
        assertThat(at(Phase.CRACK_TRANSFER, a).position().phase()).isEqualTo(Phase.SHUT_SUPPLY);
        Guide.AskValves asked = (Guide.AskValves) guide().guide(Station.BENCH, null);
        assertThat(asked.choices())
                .extracting(choice -> choice.goOn())
                .noneMatch(position -> a.equals(position.supply()));
    }

    @Test
    void theGuideLetsAPersonOpenOneThatIsHeldBack() {
        station.recorded(guide().start(
                        Station.BENCH,
                        new StartFill(FILL, bottle, Station.bar("150"), station.reads("40")),
                        station.submission()));
        say(new StandFact.SupplyHeldBack(a, "for the squad"));
        Guide.Step step = at(Phase.OPEN_SUPPLY, a);
        assertThat(step.position().supply()).isEqualTo(a);
        assertThat(Objects.requireNonNull(step.expected()).toBar()).isCloseTo(60.0, within(0.1));
        assertThat(((FillPlan) step.plan()).fill().steps())
                .extracting(Step::supply)
                .containsExactly("B", "C");
    }

    @Test
    void whatHappenedIsTakenWhateverWasSaid() {
        say(new StandFact.SupplyTaggedOut(a, "valve leaks"));
        station.recorded(guide().start(
                        Station.BENCH,
                        new StartFill(FILL, bottle, Station.bar("150"), station.reads("40")),
                        station.submission()));
        station.recorded(guide().recordStage(
                        Station.BENCH,
                        new RecordStage(FILL, new Stage(a, station.reads("60"), null, null)),
                        station.submission()));
        assertThat(view(a).estimate().toBar()).isCloseTo(60.0, within(0.1));
    }

    @Test
    void aWholeFillIsDrawnFromWhatMayBeOpened() {
        say(new StandFact.SupplyHeldBack(b, "for the squad"));
        station.recorded(guide().recordFill(
                        Station.BENCH,
                        new RecordFill(FILL, bottle, null, station.reads("40"), station.reads("150"), List.of()),
                        station.submission()));
        assertThat(view(a).estimate().toBar()).isCloseTo(60.0, within(0.1));
        assertThat(view(b).estimate().toBar()).isCloseTo(118.0, within(1e-6));
        assertThat(view(c).estimate().toBar()).isLessThan(182.0);
    }

    @Test
    void eachBankIsRankedAndPlannedByItself() {
        say(new StandFact.SupplyPlaced(a, "trailer"));
        say(new StandFact.SupplyPlaced(c, "trailer"));
        BankView bank = station.benches.keepingTheBank().bank(Station.BENCH);
        assertThat(bank.names()).containsExactly("", "trailer");
        assertThat(bank.in("trailer")).extracting(SupplyView::rank).containsExactly(1, 2);
        assertThat(bank.in("")).extracting(view -> view.supply().id()).containsExactly(b);
        assertThat(order(plan("trailer"))).containsExactly("A", "C");
        assertThat(order(plan(""))).containsExactly("B");
        assertThat(plan("").reaches()).isFalse();
    }

    @Test
    void aFillKeepsToTheBankThatWasChosen() {
        say(new StandFact.SupplyPlaced(a, "trailer"));
        say(new StandFact.SupplyPlaced(c, "trailer"));
        station.recorded(
                guide().choose(Station.BENCH, new StandFact.BankChosen(FILL, "trailer"), station.submission()));
        station.recorded(guide().start(
                        Station.BENCH,
                        new StartFill(FILL, bottle, Station.bar("150"), station.reads("40")),
                        station.submission()));
        Guide.Step step = (Guide.Step) guide().guide(Station.BENCH, new Position(1, Phase.OPEN_SUPPLY, null));
        assertThat(step.supply()).extracting(supply -> supply.id()).isEqualTo(a);
        assertThat(step.valves()).extracting(valve -> valve.name()).doesNotContain("Supply B");
        assertThat(guide().guide(Station.BENCH, new Position(1, Phase.OPEN_SUPPLY, b)))
                .isInstanceOf(Guide.AskValves.class);
    }

    @Test
    void aWholeFillIsDrawnFromTheBankThatWasChosen() {
        say(new StandFact.SupplyPlaced(a, "trailer"));
        say(new StandFact.SupplyPlaced(c, "trailer"));
        station.recorded(
                guide().choose(Station.BENCH, new StandFact.BankChosen(FILL, "trailer"), station.submission()));
        station.recorded(guide().recordFill(
                        Station.BENCH,
                        new RecordFill(FILL, bottle, null, station.reads("40"), station.reads("150"), List.of()),
                        station.submission()));
        assertThat(view(b).estimate().toBar()).isCloseTo(118.0, within(1e-6));
        assertThat(view(a).estimate().toBar()).isCloseTo(60.0, within(0.1));
    }

    @Test
    void openingTheDatabaseAgainGivesTheSame() {
        say(new StandFact.SupplyPlaced(a, "trailer"));
        say(new StandFact.SupplyTaggedOut(b, "valve leaks"));
        BankView before = station.benches.keepingTheBank().bank(Station.BENCH);
        station.close();
        station = Station.at(directory, "20");
        assertThat(station.benches.keepingTheBank().bank(Station.BENCH)).isEqualTo(before);
    }

    @Test
    void theJournalNamesTheBottleOfAFillThatHasEnded() {
        station.recorded(guide().start(
                        Station.BENCH,
                        new StartFill(FILL, bottle, Station.bar("150"), station.reads("40")),
                        station.submission()));
        for (int i = 0; i < 80; i++) {
            say(new StandFact.SupplyPutFirst(a));
        }
        station.recorded(
                guide().finish(Station.BENCH, new FinishFill(FILL, station.reads("60")), station.submission()));
        assertThat(station.benches
                        .readingTheJournal()
                        .listLines(Station.BENCH, 0, 1)
                        .get(0)
                        .sentence())
                .isEqualTo("Fill of M-03 finished at 60 bar.");
    }

    private void say(StandFact fact) {
        station.recorded(station.benches.keepingTheBank().stand(Station.BENCH, fact, station.submission()));
    }

    private FillPlan plan(String bank) {
        return (FillPlan) station.benches
                .planningAFill()
                .plan(Station.BENCH, bank, bottle, Station.bar("150"), station.reads("40"));
    }

    private GuidingAFill guide() {
        return station.benches.guidingAFill();
    }

    private Guide.Step at(Phase phase, SupplyId supply) {
        return (Guide.Step) guide().guide(Station.BENCH, new Position(1, phase, supply));
    }

    private SupplyView view(SupplyId id) {
        return station.benches.keepingTheBank().bank(Station.BENCH).supplies().stream()
                .filter(view -> view.supply().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> order(FillPlan plan) {
        return plan.fill().steps().stream().map(Step::supply).toList();
    }
}
