package org.lowfirst.planning.contents;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How often a month of readings of a tight, shut 50 L supply ends in an accusation. Gauge 0 to 315 bar, class 1.6, read to
 * 1 bar; thermometer 1 K, its error lasting from day to day as stated; weather 6 K. The rates go into docs/estimates.md.
 */
class FalseAlarmStatisticsTest {

    private final MeteredCylinder supply = Given.cylinder("S", 50);
    private final Gauge gauge = Given.gauge("G");

    private record Month(boolean accused, boolean watched) {}

    /** A month after 0 to 30 days of earlier readings. */
    private Month month(Random chance, double lasts, int every, double shakier, ContentsAssumptions assumptions) {
        SeriesJudge judge = new SeriesJudge(new ShownPressure(Given.OXYGEN), assumptions.verdicts());
        SimulatedSupply truth = new SimulatedSupply(chance, supply, gauge, 60 + 140 * chance.nextDouble(), lasts);
        truth.shaky(shakier);
        LossSeries series = new LossSeries(assumptions);
        int before = chance.nextInt(31);
        boolean accused = false;
        boolean watched = false;
        for (int day = 0; day <= before + 30; day += every) {
            series.read(truth.read());
            if (day >= before) {
                VerdictCode code = judge.judge(supply, series).code();
                accused |= code.accuses();
                watched |= code == VerdictCode.WATCH;
            }
            truth.pass(every);
        }
        return new Month(accused, watched);
    }

    @ParameterizedTest
    @CsvSource({"0.0, 1, 1500", "0.5, 1, 2500", "0.0, 2, 1500", "0.5, 2, 2000"})
    void fewerThanOneMonthInAHundredAccusesATightSupply(double errorLasts, int everyDays, int months) {
        Random chance = new Random(20260401 + everyDays);
        int accused = 0;
        int watched = 0;
        for (int i = 0; i < months; i++) {
            Month month = month(chance, errorLasts, everyDays, 1.0, Given.ASSUMED);
            accused += month.accused() ? 1 : 0;
            watched += month.watched() ? 1 : 0;
        }
        Proportion alarms = new Proportion(accused, months);
        assertThat(alarms.atMost99()).as(alarms.toString()).isLessThan(0.01);
        assertThat(new Proportion(watched, months).share()).isLessThan(0.35);
    }

    /** Twice the assumed scatter: the series itself shows it, which takes away most of the false accusations, not all. */
    @Test
    void aShakyGaugeIsSeenToBe() {
        VerdictThresholds t = Given.ASSUMED.verdicts();
        ContentsAssumptions blind = Given.ASSUMED.with(
                new VerdictThresholds(t.watchChance(), t.likelyChance(), t.preference(), t.windowReadings(), 1e12));
        Proportion seen = accusedWithTwiceTheScatter(Given.ASSUMED);
        Proportion unseen = accusedWithTwiceTheScatter(blind);
        assertThat(seen.share()).as(seen + ", unseen " + unseen).isLessThan(0.4 * unseen.share());
        assertThat(seen.atMost99()).isLessThan(0.15);
    }

    private Proportion accusedWithTwiceTheScatter(ContentsAssumptions assumptions) {
        Random chance = new Random(20260408);
        int accused = 0;
        for (int i = 0; i < 400; i++) {
            accused += month(chance, 0.0, 1, 2.0, assumptions).accused() ? 1 : 0;
        }
        return new Proportion(accused, 400);
    }
}
