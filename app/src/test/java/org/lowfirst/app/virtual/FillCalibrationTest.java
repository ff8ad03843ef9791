package org.lowfirst.app.virtual;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.app.bench.Benches;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.Opening;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.planning.contents.FillSpread.Spread;
import org.lowfirst.planning.contents.FillSpread.StageSpread;
import org.lowfirst.transfer.Ending;

/**
 * 200 fills by the guide, each at a virtual bench of its own, against the spread that the plan stated before the first valve was
 * opened. Seeded. The virtual bench moves gas by the warm model, the plan by the isothermal one.
 */
final class FillCalibrationTest {

    private static final int FILLS = 200;

    /** A shortfall this unlikely under the stated confidence is a failure. */
    private static final double UNLIKELY = 0.01;

    private static final Path TABLE = Path.of("..", "docs", "validation.md");

    private static final List<OneFill> DONE = new ArrayList<>();

    @BeforeAll
    static void play(@TempDir Path directory) {
        AtomicReference<Instant> clock = new AtomicReference<>(OneFill.START);
        AtomicLong ids = new AtomicLong();
        Opening.Opened opened = (Opening.Opened) Journal.open(directory.resolve("lowfirst.db"));
        try (Benches benches =
                new Benches(opened.journal(), new VirtualClock(clock::get), Oxygen.schmidtWagner(), Locale.ENGLISH)) {
            for (int i = 0; i < FILLS; i++) {
                DONE.add(OneFill.play(benches, clock, ids, i));
            }
        }
    }

    private static boolean shut(OneFill fill, StageSpread stage) {
        return fill.spread().plan().fill().steps().stream()
                .anyMatch(step -> step.supply().equals(stage.supply()) && step.ends() == Ending.TARGET);
    }

    /** Stages that run until both gauges show the same, and that were done. */
    private static List<StageSpread> equalStages(OneFill fill) {
        return fill.spread().stages().stream()
                .filter(stage -> !shut(fill, stage))
                .filter(stage -> !fill.stagesAt(stage.supply()).isEmpty())
                .toList();
    }

    private static StageSeen last(List<StageSeen> stages) {
        return stages.get(stages.size() - 1);
    }

    private static boolean cameToStop(OneFill fill) {
        return fill.seen().stages().stream().anyMatch(StageSeen::cameToStop);
    }

    private static Calibration firstStage() {
        Calibration calibration = new Calibration("bottle's gauge after the first supply");
        for (OneFill fill : DONE) {
            StageSpread stage = equalStages(fill).get(0);
            StageSeen seen = last(fill.stagesAt(stage.supply()));
            calibration.add(fill.asPlanned(seen.bottleShown().gauge(), seen.room()), stage.bottle());
        }
        return calibration;
    }

    private static Calibration lastSupply() {
        Calibration calibration = new Calibration("gauge of the last supply after the fill");
        for (OneFill fill : DONE) {
            StageSpread stage =
                    fill.spread().stages().get(fill.spread().stages().size() - 1);
            List<StageSeen> done = fill.stagesAt(stage.supply());
            if (!done.isEmpty()) {
                StageSeen seen = last(done);
                calibration.add(fill.asPlanned(seen.supplyShown().gauge(), seen.room()), stage.supplyAfter());
            }
        }
        return calibration;
    }

    private static Calibration shortEnd() {
        Calibration calibration = new Calibration("settled reading at the end, plan falls short of the target");
        for (OneFill fill : DONE) {
            if (!fill.spread().plan().reaches()) {
                List<StageSpread> stages = fill.spread().stages();
                calibration.add(
                        fill.asPlanned(
                                fill.seen().endShown().gauge(), fill.seen().roomAtEnd()),
                        stages.get(stages.size() - 1).bottle());
            }
        }
        return calibration;
    }

    /**
     * By the gauge that was watched the stop has no spread; what is truly in the bottle has that of the gauge, of the last reading,
     * and of the guide, which tops up until no more is missing than a gauge can tell.
     */
    private static Calibration trueEnd() {
        Calibration calibration =
                new Calibration("true settled pressure at the end, plan and needle came to the target");
        for (OneFill fill : DONE) {
            if (fill.spread().plan().reaches() && cameToStop(fill)) {
                GaugePressure limit = fill.onBottle().known().limit();
                GaugePressure missing = fill.truth()
                        .settings()
                        .rules()
                        .figures()
                        .repeatability()
                        .gauge();
                double rounding_Pa =
                        0.5 * fill.onBottle().known().scale().resolution().pascals();
                double scatter_Pa = fill.onBottle().scatter().pascals();
                double sd_Pa =
                        Math.sqrt((square(limit.pascals()) + square(missing.pascals()) + square(rounding_Pa)) / 3.0
                                + square(scatter_Pa));
                calibration.add(
                        fill.seen().settled(),
                        new Spread(
                                fill.spread().plan().stop().reading(),
                                new GaugePressure(sd_Pa),
                                List.of(limit, missing)));
            }
        }
        return calibration;
    }

    private static double square(double x) {
        return x * x;
    }

    private static List<Calibration> all() {
        return List.of(firstStage(), lastSupply(), shortEnd(), trueEnd());
    }

    @Test
    void settledReadingsAreWithinTheStatedFiftyEightyAndNinetyFivePerCent() {
        for (Calibration calibration : all()) {
            for (int i = 0; i < Calibration.NOMINAL.length; i++) {
                assertThat(calibration.chanceOfSoFew(i)).as(calibration.row()).isGreaterThan(UNLIKELY);
            }
        }
    }

    @Test
    void theChanceOfReachingTheTargetIsCounted() {
        double expected = 0.0;
        double variance = 0.0;
        int reached = 0;
        for (OneFill fill : DONE) {
            double p = fill.spread().chanceReaches();
            expected += p;
            variance += p * (1.0 - p);
            reached += cameToStop(fill) ? 1 : 0;
        }
        assertThat((double) reached).isCloseTo(expected, within(2.58 * Math.sqrt(variance)));
    }

    /** Otherwise the last reading says more than what the bottle comes to: after two hours 0.7 bar on the mean. */
    @Test
    void whoWaitsUntilItIsSettledReadsWhatTheBottleComesTo() {
        double mean_bar = DONE.stream()
                .mapToDouble(fill ->
                        fill.seen().end().toBar() - fill.seen().settled().toBar())
                .average()
                .orElseThrow();
        assertThat(mean_bar).isCloseTo(0.0, within(0.25));
    }

    /** The guide ends: no supply is opened again that gave nothing. */
    @Test
    void noFillTakesMoreThanAHandfulOfStages() {
        assertThat(DONE).allSatisfy(fill -> assertThat(fill.seen().stages()).hasSizeBetween(1, 12));
    }

    @Test
    void theTableInTheDocumentsIsWhatThisMeasures() throws IOException {
        List<String> rows = all().stream().map(Calibration::row).toList();
        assertThat(Files.readAllLines(TABLE)).as(String.join("\n", rows)).containsAll(rows);
    }
}
