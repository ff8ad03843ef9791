package org.lowfirst.app.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.app.bench.ValveState.Setting;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command.AbandonFill;
import org.lowfirst.station.Command.FinishFill;
import org.lowfirst.station.Command.RecordStage;
import org.lowfirst.station.Command.StartFill;
import org.lowfirst.station.FillId;
import org.lowfirst.station.Stage;
import org.lowfirst.station.SupplyId;

/**
 * A fill from 62, 118 and 190 bar (50 L each) into 5 L at 40 bar, to 150, 20 C. Pressures: an invented scenario computed with
 * CoolProp 8.0.0 (Schmidt and Wagner), settled. The order of the valves is common practice, no source.
 */
class GuidedFillTest {

    private static final FillId FILL = new FillId("fill-1");

    @TempDir
    private Path directory;

    private Station station;
    private SupplyId a;
    private SupplyId b;
    private SupplyId c;

    @BeforeEach
    void start() {
        station = Station.at(directory, "20");
        c = station.supply("C", "190");
        a = station.supply("A", "62");
        b = station.supply("B", "118");
        BottleId bottle = station.bottle("M-03", "5", "40");
        station.recorded(station.benches
                .guidingAFill()
                .start(
                        Station.BENCH,
                        new StartFill(FILL, bottle, Station.bar("150"), station.reads("40")),
                        station.submission()));
    }

    @AfterEach
    void close() {
        station.close();
    }

    @Test
    void theWholeFillIsLedThroughLowestFirst() {
        List<String> story = new ArrayList<>();
        Position position = new Position(1, Phase.CONNECT, null);
        while (position != null && story.size() < 40) {
            Guide.Step step = step(position);
            assertThat(open(step).stream().filter(name -> name.startsWith("Supply")))
                    .as("one supply open at a time")
                    .hasSizeLessThanOrEqualTo(1);
            story.add(step.position().phase() + " " + open(step));
            position = step.next() != null ? step.next() : entered(step);
        }
        assertThat(story)
                .containsExactly(
                        "CONNECT []",
                        "OPEN_BOTTLE [Bottle]",
                        "OPEN_SUPPLY [Bottle, Supply A]",
                        "CRACK_TRANSFER [Bottle, Transfer, Supply A]",
                        "WATCH [Bottle, Transfer, Supply A]",
                        "SHUT_TRANSFER [Bottle, Supply A]",
                        "SHUT_SUPPLY [Bottle]",
                        "ENTER_READING [Bottle]",
                        "OPEN_SUPPLY [Bottle, Supply B]",
                        "CRACK_TRANSFER [Bottle, Transfer, Supply B]",
                        "WATCH [Bottle, Transfer, Supply B]",
                        "SHUT_TRANSFER [Bottle, Supply B]",
                        "SHUT_SUPPLY [Bottle]",
                        "ENTER_READING [Bottle]",
                        "OPEN_SUPPLY [Bottle, Supply C]",
                        "CRACK_TRANSFER [Bottle, Transfer, Supply C]",
                        "WATCH [Bottle, Transfer, Supply C]",
                        "SHUT_TRANSFER [Bottle, Supply C]",
                        "SHUT_SUPPLY [Bottle]",
                        "ENTER_READING [Bottle]",
                        "SHUT_BOTTLE []",
                        "VENT_HOSE []",
                        "FINISH []");
        assertThat(station.benches.guidingAFill().guide(Station.BENCH, null)).isEqualTo(new Guide.NoFill());
        assertThat(station.bank()).hasSize(3);
        assertThat(station.bank().get(0)).isCloseTo(60.0, within(1.0));
        assertThat(station.bank().get(1)).isCloseTo(112.8, within(1.0));
        assertThat(station.bank().get(2)).isCloseTo(186.1, within(1.0));
    }

    @Test
    void eachStepNamesTheReadingToExpectAndTheOneNeverToPass() {
        Guide.Step step = step(new Position(1, Phase.WATCH, a));
        assertThat(bar(step.expected())).isCloseTo(60.0, within(0.1));
        assertThat(bar(step.neverAbove())).isCloseTo(200.0, within(0.1));
        assertThat(step(new Position(1, Phase.CONNECT, null)).expected()).isNull();
    }

    @Test
    void onAColdBenchTheReadingNeverToPassIsLowerThanTheMarking() {
        station.close();
        station = Station.at(directory.resolve("cold"), "2");
        station.supply("A", "190");
        BottleId bottle = station.bottle("M-03", "5", "40");
        station.recorded(station.benches
                .guidingAFill()
                .start(
                        Station.BENCH,
                        new StartFill(FILL, bottle, Station.bar("200"), station.reads("40")),
                        station.submission()));
        Guide.Step step = step(new Position(1, Phase.CONNECT, null));
        assertThat(bar(step.neverAbove())).isLessThan(199.0).isGreaterThan(185.0);
    }

    @Test
    void aReadingOtherThanExpectedIsTakenAndTheRestPlannedFromIt() {
        record(a, "52");
        Guide.Step step = step(new Position(2, Phase.OPEN_SUPPLY, null));
        assertThat(step.supply()).isNotNull();
        assertThat(Objects.requireNonNull(step.supply()).details().name()).isEqualTo("A");
        assertThat(step.cautions()).contains(Caution.READING_UNLIKE_EXPECTED);
        assertThat(((FillPlan) step.plan()).request().bottle().reading().toBar())
                .isCloseTo(52, within(1e-9));
    }

    @Test
    void aReadingAsExpectedRaisesNoCaution() {
        record(a, "60");
        Guide.Step step = step(new Position(2, Phase.OPEN_SUPPLY, null));
        assertThat(Objects.requireNonNull(step.supply()).details().name()).isEqualTo("B");
        assertThat(step.cautions()).doesNotContain(Caution.READING_UNLIKE_EXPECTED);
    }

    @Test
    void aSupplyTakenOutOfTurnIsFollowedToItsEnd() {
        Guide.Step step = step(new Position(1, Phase.WATCH, c));
        assertThat(Objects.requireNonNull(step.supply()).id()).isEqualTo(c);
        assertThat(bar(step.expected())).isCloseTo(150.0, within(0.1));
        record(c, "150");
        assertThat(step(new Position(2, Phase.OPEN_SUPPLY, null)).position().phase())
                .isEqualTo(Phase.SHUT_BOTTLE);
    }

    @Test
    void afterAnInterruptionTheValvesAreAskedFor() {
        record(a, "60");
        if (!(station.benches.guidingAFill().guide(Station.BENCH, null) instanceof Guide.AskValves ask)) {
            throw new AssertionError("the guide does not ask");
        }
        assertThat(ask.fill().stages()).hasSize(1);
        assertThat(ask.choices())
                .extracting(
                        choice -> open(choice.valves()) + " -> " + choice.goOn().toText())
                .containsExactly(
                        "[] -> 2.OPEN_BOTTLE",
                        "[Bottle] -> 2.ENTER_READING.supply-B",
                        "[Bottle, Supply A] -> 2.CRACK_TRANSFER.supply-A",
                        "[Bottle, Transfer, Supply A] -> 2.WATCH.supply-A",
                        "[Bottle, Supply B] -> 2.CRACK_TRANSFER.supply-B",
                        "[Bottle, Transfer, Supply B] -> 2.WATCH.supply-B",
                        "[Bottle, Supply C] -> 2.CRACK_TRANSFER.supply-C",
                        "[Bottle, Transfer, Supply C] -> 2.WATCH.supply-C");
        assertThat(ask.choices())
                .allSatisfy(choice -> assertThat(step(choice.goOn())).isNotNull());
    }

    @Test
    void theFillIsStillOpenAfterTheProgramWasClosed() {
        record(a, "60");
        station.close();
        station = Station.at(directory, "20");
        assertThat(station.benches.guidingAFill().guide(Station.BENCH, null)).isInstanceOf(Guide.AskValves.class);
    }

    @Test
    void aPositionFromBeforeTheLatestStageGoesOnAtTheNext() {
        record(a, "60");
        assertThat(step(new Position(1, Phase.WATCH, a)).position()).isEqualTo(new Position(2, Phase.OPEN_SUPPLY, b));
    }

    @Test
    void aPositionThatMakesNoSenseIsAskedAbout() {
        for (Position position : List.of(
                new Position(7, Phase.WATCH, a),
                new Position(1, Phase.WATCH, new SupplyId("supply-Z")),
                new Position(1, Phase.WATCH, null))) {
            assertThat(station.benches.guidingAFill().guide(Station.BENCH, position))
                    .isInstanceOf(Guide.AskValves.class);
        }
    }

    @Test
    void aBottleAboveItsMarkingIsShutWithACaution() {
        record(c, "204");
        Guide.Step step = step(new Position(2, Phase.OPEN_SUPPLY, null));
        assertThat(step.position().phase()).isEqualTo(Phase.SHUT_BOTTLE);
        assertThat(step.cautions()).contains(Caution.ABOVE_SERVICE_PRESSURE);
    }

    @Test
    void cautionsStandWhereTheActIs() {
        assertThat(step(new Position(1, Phase.CONNECT, null)).cautions())
                .contains(Caution.NO_OIL_OR_GREASE, Caution.CHECK_THE_MARKING, Caution.NO_IGNITION);
        assertThat(step(new Position(1, Phase.OPEN_SUPPLY, a)).cautions())
                .contains(Caution.OPEN_SLOWLY, Caution.ONE_SUPPLY_AT_A_TIME);
        assertThat(step(new Position(1, Phase.VENT_HOSE, null)).cautions()).contains(Caution.VENT_BEFORE_DISCONNECTING);
    }

    @Test
    void aBrokenOffFillKeepsWhatItDrew() {
        record(a, "60");
        station.recorded(station.benches
                .guidingAFill()
                .abandon(Station.BENCH, new AbandonFill(FILL, "called away"), station.submission()));
        assertThat(station.benches.guidingAFill().guide(Station.BENCH, null)).isEqualTo(new Guide.NoFill());
        assertThat(station.bank().get(0)).isCloseTo(60.0, within(0.1));
    }

    @Test
    void positionsAreTextAndBack() {
        for (Position position : List.of(new Position(2, Phase.WATCH, a), new Position(1, Phase.CONNECT, null))) {
            assertThat(Position.parse(position.toText())).isEqualTo(position);
        }
    }

    /** Enters what was expected; returns where to go on, or null when the fill is finished. */
    private @Nullable Position entered(Guide.Step step) {
        station.clock.forward(Duration.ofMinutes(3));
        if (step.position().phase() == Phase.FINISH) {
            station.recorded(station.benches
                    .guidingAFill()
                    .finish(Station.BENCH, new FinishFill(FILL, station.reads("150")), station.submission()));
            return null;
        }
        SupplyId supply = Objects.requireNonNull(step.supply()).id();
        record(supply, Long.toString(Math.round(bar(step.expected()) * 10)).replaceAll("(.)$", ".$1"));
        return new Position(step.position().stage() + 1, Phase.OPEN_SUPPLY, null);
    }

    private void record(SupplyId supply, String bar) {
        Stage stage = new Stage(supply, station.reads(bar), null, null);
        station.recorded(station.benches
                .guidingAFill()
                .recordStage(Station.BENCH, new RecordStage(FILL, stage), station.submission()));
    }

    private Guide.Step step(Position position) {
        Guide guide = station.benches.guidingAFill().guide(Station.BENCH, position);
        if (guide instanceof Guide.Step step) {
            return step;
        }
        throw new AssertionError(position + " gives " + guide);
    }

    private static List<String> open(Guide.Step step) {
        return open(step.valves());
    }

    private static List<String> open(List<ValveState> valves) {
        return valves.stream()
                .filter(valve -> valve.setting() != Setting.SHUT)
                .map(ValveState::name)
                .toList();
    }

    private static double bar(@Nullable GaugePressure pressure) {
        return Optional.ofNullable(pressure).orElseThrow().toBar();
    }
}
