package org.lowfirst.app.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.app.honest.Outcome;
import org.lowfirst.app.honest.StepStop;
import org.lowfirst.app.honest.StopAdvice;
import org.lowfirst.app.honest.StoppingAndSettling.StatedNow;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.warm.StopReason;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command.AllowWarmStop;
import org.lowfirst.station.Command.ConnectSupply;
import org.lowfirst.station.Command.RegisterBottle;
import org.lowfirst.station.Command.StartFill;
import org.lowfirst.station.FillId;
import org.lowfirst.station.MarkedPlate;
import org.lowfirst.station.Marking;
import org.lowfirst.station.OpenFill;
import org.lowfirst.station.Reading;
import org.lowfirst.station.RuleSet;
import org.lowfirst.station.Settings;
import org.lowfirst.station.StatedAbsolutePressure;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.SupplyDetails;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.Surroundings;
import org.lowfirst.station.Units;
import org.lowfirst.station.WarmStop;
import org.lowfirst.station.rules.Answer;
import org.lowfirst.station.rules.Service;
import org.lowfirst.station.rules.TestMark;
import org.lowfirst.station.rules.WallMaterial;

/**
 * Gate, plan, step and stop-and-settle permit the same: a bottle marked 1,800 psi with a plus, entered with its source, may hold ten
 * per cent more settled at 70 F (49 CFR 173.302a(b), from memory). The bench stands at 70 F.
 */
class PermittedPressureTest {

    private static final BenchId PINEFOLD = new BenchId("pinefold");
    private static final BottleId BOTTLE = new BottleId("b-26");
    private static final double MARKED_PSI = 1_800;
    private static final double PLUS_PSI = 1_980;

    @TempDir
    private Path directory;

    private Station station;

    @BeforeEach
    void open() {
        station = Station.at(directory, "18");
        Settings settings = new Settings(
                "Pinefold",
                Units.US,
                RuleSet.US,
                new Surroundings(fahrenheit(), StatedAbsolutePressure.STANDARD, StatedVolume.of("0", VolumeUnit.LITRE)),
                psi("2200"),
                List.of("Ida", "Tom"));
        station.recorded(station.benches.openingABench().open(PINEFOLD, settings, station.submission()));
        SupplyDetails supply = new SupplyDetails("H1", null, Station.litres("46.5"), psi("2265"));
        station.recorded(station.benches
                .keepingTheBank()
                .connect(PINEFOLD, new ConnectSupply(new SupplyId("h1"), supply, reads("2200")), station.submission()));
        BottleDetails details = new BottleDetails("B-26", "Club", Station.litres("9"), psi("1800"), null, null);
        station.recorded(station.benches
                .registeringBottles()
                .register(PINEFOLD, new RegisterBottle(BOTTLE, details, reads("300")), station.submission()));
        Marking marking = new Marking(
                null,
                new MarkedPlate("3AA", WallMaterial.STEEL, null, YearMonth.of(2012, 8)),
                new TestMark(YearMonth.of(2022, 8), true, false, ""),
                Service.oxygen("CGA 540"),
                0,
                null);
        station.recorded(station.benches.keepingMarkings().mark(PINEFOLD, BOTTLE, marking, station.submission()));
        Map<String, Answer> answers = new HashMap<>();
        station.benches
                .judgingFitness()
                .ofBottle(PINEFOLD, BOTTLE)
                .questions()
                .forEach(question -> answers.put(question.code(), Answer.NO));
        station.recorded(station.benches.keepingMarkings().answer(PINEFOLD, BOTTLE, answers, station.submission()));
    }

    @AfterEach
    void close() {
        station.close();
    }

    private void enterPlus() {
        station.recorded(station.benches
                .keepingMarkings()
                .enterPlus(PINEFOLD, BOTTLE, "requalification report 7", station.submission()));
    }

    private void allowWarmStops() {
        station.recorded(station.benches
                .allowingWarmStops()
                .allow(PINEFOLD, new AllowWarmStop(new WarmStop("Ida", "sheet 4, 2024")), station.submission()));
    }

    private static StatedPressure psi(String value) {
        return StatedPressure.of(value, PressureUnit.PSI);
    }

    private static StatedTemperature fahrenheit() {
        return StatedTemperature.of("70", TemperatureUnit.FAHRENHEIT);
    }

    private Reading reads(String psi) {
        return new Reading(psi(psi), station.clock.instant(), fahrenheit(), false, null);
    }

    /** What stop-and-settle says of the bottle at 1,700 psi with gas at 50 C. */
    private StopAdvice stop() {
        return ((Outcome.Given<StopAdvice>) station.benches
                        .stoppingAndSettling()
                        .forStated(PINEFOLD, new StatedNow(BOTTLE, psi("1700").gauge(), Temperature.ofCelsius(50))))
                .value();
    }

    private double gate_psi() {
        return station.benches
                .judgingFitness()
                .findMost(PINEFOLD, BOTTLE, reads("300"))
                .orElseThrow()
                .to(PressureUnit.PSI);
    }

    private double plan_psi() {
        FillPlan plan = (FillPlan) station.benches.planningAFill().plan(PINEFOLD, BOTTLE, psi("1500"), reads("300"));
        return plan.stop().neverAbove().to(PressureUnit.PSI);
    }

    @Test
    void theSamePressureIsPermittedWhereverItIsAskedFor() {
        for (double permitted : new double[] {MARKED_PSI, PLUS_PSI}) {
            assertThat(gate_psi()).isCloseTo(permitted, within(0.5));
            assertThat(plan_psi()).isCloseTo(gate_psi(), within(0.1));
            assertThat(stop().plan().stop().full().to(PressureUnit.PSI)).isCloseTo(gate_psi(), within(0.1));
            assertThat(stop().plan().stop().reading().to(PressureUnit.PSI)).isCloseTo(gate_psi(), within(0.1));
            if (permitted < PLUS_PSI) {
                enterPlus();
            }
        }
        assertThat(stop().plan().stop().why()).isEqualTo(StopReason.RULE_BOOK_READING);
        assertThat(stop().sentences()).anySatisfy(said -> assertThat(said).contains("the rule book permits"));
    }

    @Test
    void aStepGoesAboveItWhileTheGasIsWarmOnlyWhereThatIsAllowed() {
        enterPlus();
        station.recorded(station.benches
                .guidingAFill()
                .start(
                        PINEFOLD,
                        new StartFill(new FillId("f"), BOTTLE, psi("1900"), reads("300")),
                        station.submission()));
        assertThat(step()).isEmpty();
        allowWarmStops();
        StepStop step = step().orElseThrow();
        assertThat(step.neverAbove().to(PressureUnit.PSI)).isBetween(PLUS_PSI + 10, PLUS_PSI * 1.2);
        assertThat(step.shutAt().to(PressureUnit.PSI))
                .isBetween(1_910.0, step.neverAbove().to(PressureUnit.PSI));
        assertThat(step.sentences())
                .hasSize(3)
                .anySatisfy(
                        said -> assertThat(said).contains("1,980 psi at 70 F", "the most that the rule book permits"))
                .anySatisfy(said -> assertThat(said).contains("1,900 psi at most", "were the gas 14 F colder"));
    }

    private Optional<StepStop> step() {
        OpenFill fill = station.benches
                .openingABench()
                .findBench(PINEFOLD)
                .orElseThrow()
                .openFill()
                .orElseThrow();
        return station.benches.stoppingAndSettling().findForStep(PINEFOLD, fill);
    }
}
