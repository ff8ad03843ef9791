package org.lowfirst.planning.contents;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.contents.ContentsMeasurement.GaugeErrors;

/** The stated chance of noise is an upper bound, and not a wasteful one: series of pure noise, counted. */
class ChanceBoundConsistencyTest {

    private static final int SERIES = 20_000;
    private static final int READINGS = 30;

    /** Amount 300 mol, scatter 2 mol, nothing else. */
    private static ContentsMeasurement noise(int day, Random chance) {
        Instant at = Given.day(day);
        GaugeReading reading = new GaugeReading(
                at,
                "S",
                "G",
                GaugePressure.ofBar(150),
                new GasTemperature(Given.measured(15).value(), 0.0, GasTemperature.Known.MEASURED));
        return new ContentsMeasurement(
                reading, 300.0 + 2.0 * chance.nextGaussian(), 2e-5, -1.0, new GaugeErrors(0.0, 1e5, 0.0, 5e5));
    }

    @ParameterizedTest
    @CsvSource({"1.5", "2.0", "2.5", "3.0"})
    void noiseExceedsAStrengthNoMoreOftenThanTheBoundSays(double z) {
        Random chance = new Random(20260404);
        int leaks = 0;
        int steps = 0;
        double leakBound = 0.0;
        double stepBound = 0.0;
        for (int i = 0; i < SERIES; i++) {
            LossSeries series = new LossSeries(Given.ASSUMED);
            for (int day = 0; day < READINGS; day++) {
                series.read(noise(day, chance));
            }
            Signature leak = series.leaks().strongestPositive();
            Signature step = series.steps().strongestPositive();
            leaks += leak != null && leak.z() > z ? 1 : 0;
            steps += step != null && step.z() > z ? 1 : 0;
            leakBound = series.leaks().chanceAbove(z);
            stepBound = series.steps().chanceAbove(z);
        }
        Proportion leakShare = new Proportion(leaks, SERIES);
        Proportion stepShare = new Proportion(steps, SERIES);
        assertThat(leakShare.atLeast99()).isLessThan(leakBound);
        assertThat(stepShare.atLeast99()).isLessThan(stepBound);
        assertThat(leakBound).isLessThan(3.0 * leakShare.atMost99());
        assertThat(stepBound).isLessThan(4.0 * stepShare.atMost99());
    }
}
