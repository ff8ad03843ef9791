package org.lowfirst.planning.contents;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LeakSensitivityTest {

    private static final int TRIALS = 600;

    private final MeteredCylinder supply = Given.cylinder("S", 50);
    private final Gauge gauge = Given.gauge("G");
    private final LeakSensitivity sensitivity = new LeakSensitivity(Given.ASSUMED);

    private double smallest(double bar, int before) {
        ContentsMeasurement typical = Given.measured(0, supply, gauge, bar, Given.measured(12));
        return sensitivity.smallestNamed(typical, before, 7, Duration.ofDays(1));
    }

    @Test
    void moreReadingsBeforeAndMorePressureShowSmallerLeaks() {
        assertThat(smallest(60, 7)).isLessThan(smallest(60, 1));
        assertThat(smallest(150, 7)).isLessThan(smallest(60, 7));
    }

    /** Simulated: a leak of the stated size is named by the last reading in at least 90 of 100 cases, one of half the size seldom. */
    @Test
    void theStatedLeakIsNamedAsOftenAsStated() {
        for (double bar : new double[] {60, 150}) {
            double share = smallest(bar, 8);
            Proportion found = named(bar, share);
            assertThat(found.atLeast99()).as(found.toString()).isGreaterThan(0.90);
            assertThat(named(bar, 0.5 * share).share()).isLessThan(0.5);
        }
    }

    private Proportion named(double bar, double share) {
        Random chance = new Random(20260406);
        SeriesJudge judge = new SeriesJudge(new ShownPressure(Given.OXYGEN), Given.ASSUMED.verdicts());
        int hits = 0;
        for (int i = 0; i < TRIALS; i++) {
            SimulatedSupply truth = new SimulatedSupply(chance, supply, gauge, bar, 0.0);
            LossSeries series = new LossSeries(Given.ASSUMED);
            for (int day = 0; day < 15; day++) {
                if (day == 7) {
                    truth.leak(share);
                }
                series.read(truth.read());
                truth.pass(1);
            }
            hits += judge.judge(supply, series).code() == VerdictCode.LIKELY_LEAK ? 1 : 0;
        }
        return new Proportion(hits, TRIALS);
    }
}
