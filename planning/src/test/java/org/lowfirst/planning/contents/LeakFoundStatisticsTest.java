package org.lowfirst.planning.contents;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How often a leak of 1 % of the contents a day is named within a week. 50 L supply, gauge 0 to 315 bar, class 1.6, read to
 * 1 bar; thermometer 1 K. The rates go into docs/estimates.md.
 */
class LeakFoundStatisticsTest {

    private static final int TRIALS = 600;

    private final MeteredCylinder supply = Given.cylinder("S", 50);
    private final Gauge gauge = Given.gauge("G");
    private final SeriesJudge judge = new SeriesJudge(new ShownPressure(Given.OXYGEN), Given.ASSUMED.verdicts());

    private boolean named(Random chance, double bar, int daysBefore, double errorLasts, int every) {
        SimulatedSupply truth = new SimulatedSupply(chance, supply, gauge, bar, errorLasts);
        LossSeries series = new LossSeries(Given.ASSUMED);
        for (int day = 0; day < daysBefore; day += every) {
            series.read(truth.read());
            truth.pass(every);
        }
        truth.leak(0.01);
        for (int day = 0; day <= 7; day += every) {
            series.read(truth.read());
            if (judge.judge(supply, series).code() == VerdictCode.LIKELY_LEAK) {
                return true;
            }
            truth.pass(every);
        }
        return false;
    }

    private Proportion found(double bar, int daysBefore, double errorLasts, int every) {
        Random chance = new Random(20260402);
        int found = 0;
        for (int i = 0; i < TRIALS; i++) {
            found += named(chance, bar, daysBefore, errorLasts, every) ? 1 : 0;
        }
        return new Proportion(found, TRIALS);
    }

    /** Daily: from 90 bar up after a week of readings, from 140 bar up without any. Every second day: from 150 bar up. */
    @ParameterizedTest
    @CsvSource({
        "90, 7, 0.0, 1",
        "90, 7, 0.5, 1",
        "120, 7, 0.0, 1",
        "150, 7, 0.5, 1",
        "190, 7, 0.0, 1",
        "80, 28, 0.0, 1",
        "140, 0, 0.0, 1",
        "150, 0, 0.5, 1",
        "150, 7, 0.0, 2"
    })
    void aLeakOfOnePerCentADayIsNamedWithinAWeek(double bar, int daysBefore, double errorLasts, int everyDays) {
        Proportion found = found(bar, daysBefore, errorLasts, everyDays);
        assertThat(found.atLeast99()).as(found.toString()).isGreaterThanOrEqualTo(0.95);
    }
}
