package org.lowfirst.app.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.planning.session.Effort;
import org.lowfirst.planning.session.SessionPlan;
import org.lowfirst.planning.session.SessionPlanner;
import org.lowfirst.planning.session.SessionWatch;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command;
import org.lowfirst.station.Command.FinishFill;
import org.lowfirst.station.Command.RecordStage;
import org.lowfirst.station.FillId;
import org.lowfirst.station.OpenFill;
import org.lowfirst.station.PlannedStage;
import org.lowfirst.station.SessionAim;
import org.lowfirst.station.SessionFact.StageSkipped;
import org.lowfirst.station.SessionId;
import org.lowfirst.station.SessionWish;
import org.lowfirst.station.Stage;
import org.lowfirst.station.StatedPressure;

/** Three bottles of 3 L at 20, 40 and 60 bar wanted at 150, on supplies of 50 L at 62, 118 and 190 bar, 20 C; invented. */
class GuidedSessionTest {

    private static final SessionId SESSION = new SessionId("session-1");

    @TempDir
    private Path directory;

    @TempDir
    private Path another;

    private Station station;
    private final List<SessionWish> wishes = new ArrayList<>();
    private final List<Command> done = new ArrayList<>();

    @BeforeEach
    void start() {
        station = bench(directory);
        for (String reading : List.of("20", "40", "60")) {
            wishes.add(new SessionWish(
                    new FillId("fill-" + reading),
                    new BottleId("bottle-B" + reading),
                    station.reads(reading),
                    Station.bar("150"),
                    null,
                    1));
        }
    }

    private static Station bench(Path directory) {
        Station bench = Station.at(directory, "20");
        bench.supply("A", "62");
        bench.supply("B", "118");
        bench.supply("C", "190");
        bench.bottle("B20", "3", "20");
        bench.bottle("B40", "3", "40");
        bench.bottle("B60", "3", "60");
        bench.recorded(bench.benches
                .keepingAccounts()
                .enter(Station.BENCH, MoneyExamples.tariff("0.011", "1.50", "20"), bench.submission()));
        return bench;
    }

    @AfterEach
    void close() {
        station.close();
    }

    private GuidingASession guiding() {
        return station.benches.guidingASession();
    }

    private void begin() {
        PlanningASession.Asked asked =
                station.benches.planningASession().asked(Station.BENCH, "", SessionAim.USUAL, wishes);
        SessionPlan plan = (SessionPlan)
                SessionPlanner.under(asked.conditions()).plan(asked.request(), Effort.USUAL, SessionWatch.PATIENT);
        station.recorded(
                guiding().begin(Station.BENCH, SESSION, null, SessionAim.USUAL, wishes, plan, station.submission()));
    }

    private SessionNow now() {
        return guiding().now(Station.BENCH).orElseThrow();
    }

    private void enter(FillId fill, PlannedStage stage, StatedPressure read) {
        RecordStage command = new RecordStage(fill, new Stage(stage.supply(), station.reads(text(read)), null, null));
        int number = openFill(fill).stages().size() + 1;
        station.recorded(
                station.benches.guidingAFill().recordStage(Station.BENCH, command, number, station.submission()));
        done.add(command);
    }

    private OpenFill openFill(FillId fill) {
        return station.benches
                .openingABench()
                .findBench(Station.BENCH)
                .orElseThrow()
                .findOpenFill(fill)
                .orElseThrow();
    }

    private static String text(StatedPressure pressure) {
        return pressure.value().toPlainString();
    }

    /** Does what is next, every gauge as planned. */
    private void act() {
        SessionNow.Act act = now().act();
        if (act instanceof SessionNow.Act.Begin begin) {
            SessionWish wish = begin.wish();
            station.recorded(
                    guiding().startBottle(Station.BENCH, wish.fill(), wish.before(), null, station.submission()));
            done.add(new Command.StartFill(wish.fill(), wish.bottle(), wish.target(), wish.before()));
        } else if (act instanceof SessionNow.Act.GoOn on) {
            enter(on.fill().id(), on.stage(), on.stage().until());
        } else if (act instanceof SessionNow.Act.Finish finish) {
            FinishFill command =
                    new FinishFill(finish.fill().id(), finish.fill().bottleNow());
            station.recorded(station.benches.guidingAFill().finish(Station.BENCH, command, station.submission()));
            done.add(command);
        }
        guiding().keepUp(Station.BENCH, station.submission());
    }

    private void actUntilItEnds() {
        for (int turn = 0; turn < 40 && guiding().now(Station.BENCH).isPresent(); turn++) {
            act();
        }
        assertThat(guiding().now(Station.BENCH)).isEmpty();
    }

    @Test
    void everyBottleIsFilledAndRecordedAsSeparateFillsWouldBe() {
        begin();
        actUntilItEnds();
        try (Station apart = bench(another)) {
            for (SessionWish wish : wishes) {
                for (Command command : done) {
                    if (belongs(command, wish.fill())) {
                        enter(apart, command);
                    }
                }
            }
            assertThat(station.bank()).containsExactlyElementsOf(apart.bank());
            assertThat(readings(station)).isEqualTo(readings(apart)).allMatch(read -> read.startsWith("150"));
            assertThat(charges(station)).hasSize(3).isEqualTo(charges(apart));
        }
    }

    private static boolean belongs(Command command, FillId fill) {
        return (command instanceof Command.StartFill start && start.fill().equals(fill))
                || (command instanceof RecordStage stage && stage.fill().equals(fill))
                || (command instanceof FinishFill finish && finish.fill().equals(fill));
    }

    private static void enter(Station bench, Command command) {
        GuidingAFill fills = bench.benches.guidingAFill();
        if (command instanceof Command.StartFill start) {
            bench.recorded(fills.start(Station.BENCH, start, bench.submission()));
        } else if (command instanceof RecordStage stage) {
            bench.recorded(fills.recordStage(Station.BENCH, stage, bench.submission()));
        } else if (command instanceof FinishFill finish) {
            bench.recorded(fills.finish(Station.BENCH, finish, bench.submission()));
        }
    }

    private static List<String> charges(Station bench) {
        return bench.benches.keepingAccounts().books(Station.BENCH).book().lines().stream()
                .map(line -> line.fill().person() + " " + line.quantity() + " " + line.amount())
                .sorted()
                .toList();
    }

    private static List<String> readings(Station bench) {
        return bench.benches.registeringBottles().listBottles(Station.BENCH).stream()
                .map(bottle ->
                        bottle.latest() == null ? "" : text(bottle.latest().pressure()))
                .toList();
    }

    @Test
    void aReadingBeyondWhatItsGaugeMayErrPlansTheRestAgainAndSaysWhy() {
        begin();
        while (!(now().act() instanceof SessionNow.Act.GoOn far && rise_bar(far) > 15.0)) {
            act();
        }
        SessionNow.Act.GoOn on = (SessionNow.Act.GoOn) now().act();
        StatedPressure less = new StatedPressure(
                on.stage().until().value().subtract(BigDecimal.valueOf(12)),
                on.stage().until().unit());
        enter(on.fill().id(), on.stage(), less);
        assertThat(now().act()).isInstanceOf(SessionNow.Act.PlanAgain.class);
        List<Surprise> why = guiding().keepUp(Station.BENCH, station.submission());
        assertThat(why).singleElement().satisfies(one -> {
            assertThat(one.kind()).isEqualTo(Surprise.Kind.READING);
            assertThat(one.read()).isEqualTo(less);
            assertThat(one.expected()).isEqualTo(on.stage().until());
        });
        assertThat(now().why()).isEqualTo(why);
        actUntilItEnds();
    }

    private static double rise_bar(SessionNow.Act.GoOn on) {
        return on.stage().until().gauge().toBar()
                - on.fill().bottleNow().pressure().gauge().toBar();
    }

    @Test
    void aStageLeftOutIsNotPlannedAgainAndTheOthersGoOn() {
        begin();
        PlannedStage first = now().session().next().orElseThrow();
        station.recorded(guiding()
                .skip(
                        Station.BENCH,
                        new StageSkipped(SESSION, first.fill(), first.supply(), "valve sticks"),
                        station.submission()));
        guiding().keepUp(Station.BENCH, station.submission());
        assertThat(now().session().remaining(first.fill()))
                .extracting(PlannedStage::supply)
                .doesNotContain(first.supply());
        actUntilItEnds();
    }

    @Test
    void aBottleTakenOutLeavesTheGasToTheOthers() {
        begin();
        FillId out = wishes.get(1).fill();
        station.recorded(guiding().leaveOut(Station.BENCH, out, "its valve leaks", station.submission()));
        guiding().keepUp(Station.BENCH, station.submission());
        assertThat(now().session().remaining(out)).isEmpty();
        assertThat(now().session().out()).containsEntry(out, "its valve leaks");
        actUntilItEnds();
        assertThat(readings(station).get(1)).isEqualTo("40");
    }

    @Test
    void endedEarlyItKeepsWhatWasRecorded() {
        begin();
        act();
        act();
        station.recorded(guiding().end(Station.BENCH, SESSION, "thunderstorm", station.submission()));
        assertThat(guiding().now(Station.BENCH)).isEmpty();
        assertThat(station.bank()).isNotEqualTo(List.of(62.0, 118.0, 190.0));
    }

    @Test
    void itSurvivesARestart() {
        begin();
        act();
        SessionNow before = now();
        station.close();
        station = Station.at(directory, "20");
        assertThat(now()).isEqualTo(before);
    }

    @Test
    void aSecondDeviceCannotEnterTheSameStageTwice() {
        begin();
        act();
        SessionNow.Act.GoOn on = (SessionNow.Act.GoOn) now().act();
        enter(on.fill().id(), on.stage(), on.stage().until());
        Recording twice = station.benches
                .guidingAFill()
                .recordStage(Station.BENCH, (RecordStage) done.get(done.size() - 1), 1, station.submission());
        assertThat(twice).isInstanceOf(Recording.NotRecorded.class);
        assertThat(openFill(on.fill().id()).stages()).hasSize(1);
    }

    @Test
    void noTwoStagesTakeTheirTurnAtOnce() {
        begin();
        Set<FillId> turns = new HashSet<>();
        wishes.forEach(
                wish -> GuidingASession.turn(now().session(), wish.fill()).ifPresent(supply -> turns.add(wish.fill())));
        assertThat(turns).hasSize(1);
    }
}
