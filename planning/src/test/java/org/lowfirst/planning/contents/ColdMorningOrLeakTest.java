package org.lowfirst.planning.contents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.Temperature;

/** A supply that reads less on a cold day, and a bottle the morning after a warm fill. Expected pressures: CoolProp 8.0.0. */
class ColdMorningOrLeakTest {

    private final ReadingComparison comparison = new ReadingComparison(Given.OXYGEN, Given.ASSUMED);
    private final MeteredCylinder supply = Given.cylinder("S-1", 50);
    private final MeteredCylinder bottle = Given.cylinder("B-7", 2);
    private final Gauge gauge = Given.gauge("G-1");

    private ContentsMeasurement supplyReads(double day, double bar, double celsius) {
        return Given.measured(day, supply, gauge, bar, Given.measured(celsius));
    }

    private ContentsMeasurement bottleReads(double day, double bar, double celsius) {
        return Given.measured(day, bottle, gauge, bar, Given.measured(celsius));
    }

    private ContentsMeasurement bottleHot() {
        GasTemperature hot = GasTemperature.warmModelled(Temperature.ofCelsius(58), Given.ASSUMED);
        return Given.measured(0, bottle, gauge, 200, hot);
    }

    /** 142 bar at 24 C, 127 at 9 C and 118 at 21 C are 136.0, 130.8 and 114.8 bar at 15 C. */
    @Test
    void whatEachReadingMeansIsWorkedOutFirst() {
        assertThat(Given.litres15(supplyReads(0, 142, 24).amount_mol())).isCloseTo(7258, within(1.0));
        assertThat(Given.litres15(supplyReads(7, 127, 9).amount_mol())).isCloseTo(6975, within(1.0));
        assertThat(Given.litres15(supplyReads(14, 118, 21).amount_mol())).isCloseTo(6101, within(1.0));
    }

    @Test
    void fifteenBarLessOnAColdDayIsFiveMissingAndToBeWatched() {
        Verdict verdict = comparison.compare(supply, List.of(supplyReads(0, 142, 24), supplyReads(7, 127, 9)));
        assertThat(verdict.code()).isEqualTo(VerdictCode.WATCH);
        assertThat(verdict.advice()).isEqualTo(Advice.READ_AGAIN_SETTLED);
        assertThat(verdict.evidence().expected().toBar()).isCloseTo(132.0, within(0.05));
        assertThat(verdict.evidence().near().toCelsius()).isCloseTo(24.0, within(1e-9));
        assertThat(verdict.chanceOfNoise()).isBetween(0.0005, 0.01);
    }

    @Test
    void elevenBarLessOnAWarmerDayIsALikelyLeak() {
        Verdict verdict = comparison.compare(
                supply, List.of(supplyReads(0, 142, 24), supplyReads(7, 127, 9), supplyReads(14, 118, 21)));
        assertThat(verdict.code()).isEqualTo(VerdictCode.LIKELY_LEAK);
        assertThat(verdict.advice()).isEqualTo(Advice.FIND_THE_LEAK);
        assertThat(verdict.chanceOfNoise()).isLessThan(1e-9);
        assertThat(verdict.evidence().share()).isBetween(0.01, 0.03);
    }

    @Test
    void lessOnAColdDayAloneIsInsideGaugeUncertainty() {
        Verdict verdict = comparison.compare(supply, List.of(supplyReads(0, 142, 24), supplyReads(7, 131, 9)));
        assertThat(verdict.code()).isEqualTo(VerdictCode.INSIDE_GAUGE_UNCERTAINTY);
    }

    @Test
    void theMorningAfterAWarmFillReadsLessAndIsNormal() {
        Verdict verdict = comparison.compare(bottle, List.of(bottleHot(), bottleReads(0.6, 153, 2)));
        assertThat(verdict.code()).isEqualTo(VerdictCode.INSIDE_GAUGE_UNCERTAINTY);
        assertThat(verdict.evidence().expected().toBar()).isCloseTo(152.8, within(0.05));
    }

    @Test
    void fourteenBarBelowTheMorningAfterIsALikelyLeak() {
        Verdict verdict = comparison.compare(bottle, List.of(bottleHot(), bottleReads(0.6, 139, 2)));
        assertThat(verdict.code()).isEqualTo(VerdictCode.LIKELY_LEAK);
        assertThat(verdict.evidence().expected().toBar()
                        - verdict.evidence().shown().toBar())
                .isCloseTo(13.8, within(0.1));
    }

    @Test
    void aSettledReadingInBetweenMakesTheLeakSurer() {
        double hotOnly = comparison
                .compare(bottle, List.of(bottleHot(), bottleReads(0.6, 139, 2)))
                .chanceOfNoise();
        double settled = comparison
                .compare(bottle, List.of(bottleHot(), bottleReads(0.1, 166, 18), bottleReads(0.6, 139, 2)))
                .chanceOfNoise();
        assertThat(settled).isLessThan(hotOnly);
    }

    @Test
    void anAssumedTemperatureProvesLess() {
        GasTemperature guessed = GasTemperature.assumed(Temperature.ofCelsius(9), Given.ASSUMED);
        Verdict verdict = comparison.compare(
                supply, List.of(supplyReads(0, 142, 24), Given.measured(7, supply, gauge, 127, guessed)));
        assertThat(verdict.code()).isEqualTo(VerdictCode.INSIDE_GAUGE_UNCERTAINTY);
    }

    @Test
    void anotherGaugeProvesLess() {
        Gauge other = Given.gauge("G-2");
        Verdict verdict = comparison.compare(
                supply, List.of(supplyReads(0, 142, 24), Given.measured(7, supply, other, 127, Given.measured(9))));
        assertThat(verdict.code()).isEqualTo(VerdictCode.INSIDE_GAUGE_UNCERTAINTY);
    }
}
