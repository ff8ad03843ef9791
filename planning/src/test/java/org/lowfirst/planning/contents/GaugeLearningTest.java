package org.lowfirst.planning.contents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.contents.BenchFact.ReadingTaken;
import org.lowfirst.planning.contents.BenchFact.Since;
import org.lowfirst.planning.contents.BenchFact.StageMade;
import org.lowfirst.planning.contents.BenchHistory.DatedVerdict;

/** Two gauges on one pressure at the end of a stage that ran until equal. */
class GaugeLearningTest {

    private final MeteredCylinder supply = Given.cylinder("S", 50);
    private final Gauge onSupply = Given.gauge("on S");

    private StageMade equal(double day, String bottle, double supply_bar, double bottle_bar) {
        return new StageMade(
                Given.day(day),
                "S",
                bottle,
                true,
                null,
                Given.reading(day, "S", "on S", supply_bar, Given.measured(15)),
                Given.reading(day, bottle, "on " + bottle, bottle_bar, Given.measured(15)));
    }

    private BenchHistory history(List<MeteredCylinder> bottles, List<BenchFact> facts) {
        List<MeteredCylinder> cylinders = new ArrayList<>(bottles);
        cylinders.add(supply);
        List<Gauge> gauges = new ArrayList<>(
                bottles.stream().map(b -> Given.gauge("on " + b.name())).toList());
        gauges.add(onSupply);
        return new Reconciliation(Given.OXYGEN, Given.ASSUMED).reconcile(cylinders, gauges, facts);
    }

    /** The supply's gauge shows 4 bar too much; ten bottles with right gauges tell. */
    @Test
    void aSupplyGaugeThatShowsTooMuchIsLearnedFromManyBottles() {
        List<MeteredCylinder> bottles = new ArrayList<>();
        List<BenchFact> facts = new ArrayList<>();
        facts.add(new ReadingTaken(Given.reading(0, "S", "on S", 154, Given.measured(15)), Since.KEPT_SHUT));
        double pressure = 150;
        for (int i = 1; i <= 10; i++) {
            String name = "B" + i;
            bottles.add(Given.cylinder(name, 2));
            facts.add(new ReadingTaken(Given.reading(i, name, "on " + name, 60, Given.measured(15)), Since.MAYBE_USED));
            pressure = (50 * pressure + 2 * 60) / 52;
            facts.add(equal(i + 0.01, name, pressure + 4, pressure));
        }
        Map<String, GaugeOffset> offsets = history(bottles, facts).offsets();
        GaugeOffset learned = Objects.requireNonNull(offsets.get("on S"));
        assertThat(learned.tooHigh().toBar()).isCloseTo(3.7, within(0.8));
        assertThat(learned.standardDeviation().toBar()).isBetween(0.3, 1.3);
        assertThat(onSupply.with(learned).offset_Pa(Given.START, Given.ASSUMED.gauges()))
                .isLessThan(onSupply.offset_Pa(Given.START, Given.ASSUMED.gauges()));
    }

    @Test
    void oneStageSplitsTheDifferenceBetweenTwoGaugesOfOneClass() {
        List<BenchFact> facts = List.of(
                new ReadingTaken(Given.reading(0, "S", "on S", 154, Given.measured(15)), Since.KEPT_SHUT),
                new ReadingTaken(Given.reading(0, "B1", "on B1", 60, Given.measured(15)), Since.MAYBE_USED),
                equal(0.1, "B1", 150, 146));
        Map<String, GaugeOffset> offsets =
                history(List.of(Given.cylinder("B1", 2)), facts).offsets();
        double tooHigh = Objects.requireNonNull(offsets.get("on S")).tooHigh().toBar();
        double tooLow = Objects.requireNonNull(offsets.get("on B1")).tooHigh().toBar();
        assertThat(tooHigh).isPositive();
        assertThat(tooLow).isNegative();
        assertThat(tooHigh - tooLow).isBetween(2.0, 4.0);
    }

    /** Class 1.6 of 315 bar allows each 5.04 bar; 18 bar apart is beyond both. */
    @Test
    void gaugesFurtherApartThanBothClassesAllowDisagree() {
        List<BenchFact> facts = List.of(
                new ReadingTaken(Given.reading(0, "S", "on S", 154, Given.measured(15)), Since.KEPT_SHUT),
                new ReadingTaken(Given.reading(0, "B1", "on B1", 60, Given.measured(15)), Since.MAYBE_USED),
                equal(0.1, "B1", 150, 132));
        List<DatedVerdict> verdicts =
                history(List.of(Given.cylinder("B1", 2)), facts).verdicts();
        assertThat(verdicts).anySatisfy(dated -> {
            assertThat(dated.verdict().code()).isEqualTo(VerdictCode.GAUGE_DISAGREES);
            assertThat(dated.verdict().cause()).isEqualTo(Cause.GAUGE_PAIR);
            assertThat(dated.verdict().advice()).isEqualTo(Advice.COMPARE_THE_GAUGES);
            assertThat(dated.verdict().other()).isEqualTo("B1");
        });
    }

    @Test
    void gaugesWithinTheirClassesDoNotDisagree() {
        Gauge other = Given.gauge("other");
        GaugePair pair =
                GaugePair.compare(onSupply, GaugePressure.ofBar(150), other, GaugePressure.ofBar(141), Given.ASSUMED);
        assertThat(pair.allowed().toBar()).isCloseTo(10.08, within(1e-9));
        assertThat(pair.disagrees(Given.ASSUMED.verdicts())).isFalse();
        assertThat(pair.chanceOfNoise()).isGreaterThan(0.5);
    }
}
