package org.lowfirst.planning.camp;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hipparchus.distribution.discrete.PoissonDistribution;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.BottleToFill;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.FillPlanner;
import org.lowfirst.planning.FillRequest;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.SupplyState;
import org.lowfirst.planning.study.BottleUse;

/** How many supplies a camp takes along. */
final class PlanningACampTest {

    private static final Conditions CONDITIONS =
            Conditions.of(Oxygen.schmidtWagner(), Temperature.ofCelsius(15), ReferenceRule.EU);
    private static final BottleUse FIXED = use("fixed", 3, 40, 40, 150);

    private static BottleUse use(String name, double litres, double startLowest, double startHighest, double target) {
        return new BottleUse(
                name,
                Volume.ofLitres(litres),
                GaugePressure.ofBar(232),
                GaugePressure.ofBar(target),
                GaugePressure.ofBar(startLowest),
                GaugePressure.ofBar(startHighest),
                1);
    }

    private static CampRequest request(List<BottleUse> bottles, int days, int pilots, double flyable, double chance) {
        return new CampRequest(
                CONDITIONS,
                Volume.ofLitres(50),
                GaugePressure.ofBar(200),
                bottles,
                days,
                pilots,
                0.5,
                flyable,
                chance,
                3);
    }

    private static CampPlan plan(CampRequest request) {
        CampOutcome outcome = PlanningACamp.plan(request);
        assertThat(outcome).isInstanceOf(CampPlan.class);
        return (CampPlan) outcome;
    }

    /** With one kind of bottle the chance is that of a Poisson number not above the planner's fills left (Hipparchus). */
    @Test
    void theChanceIsThatOfEnoughFillsInTheBank() {
        CampPlan plan = plan(request(List.of(FIXED), 10, 8, 1, 0.95));
        PoissonDistribution wanted = new PoissonDistribution(10 * 8 * 0.5);
        for (CampOption option : plan.options()) {
            double expected = wanted.cumulativeProbability(fillsLeft(option.supplies()));
            // 2,000 camps: three standard deviations
            assertThat(option.chanceAll())
                    .isEqualTo(expected, within(3 * Math.sqrt(expected * (1 - expected) / 2_000) + 1e-9));
        }
        assertThat(plan.supplies().orElseThrow()).isEqualTo(plan.options().size());
        assertThat(plan.fillsWanted().low90()).isCloseTo(wanted.inverseCumulativeProbability(0.05), within(1));
        assertThat(plan.fillsWanted().high90()).isCloseTo(wanted.inverseCumulativeProbability(0.95), within(1));
    }

    private static int fillsLeft(int supplies) {
        List<SupplyState> bank = java.util.stream.IntStream.range(0, supplies)
                .mapToObj(i -> new SupplyState("S" + i, Volume.ofLitres(50), GaugePressure.ofBar(200)))
                .toList();
        return ((FillPlan) FillPlanner.under(CONDITIONS)
                        .plan(new FillRequest(
                                bank,
                                new BottleToFill(
                                        "fixed",
                                        FIXED.waterVolume(),
                                        FIXED.startLowest(),
                                        FIXED.target(),
                                        FIXED.servicePressure()))))
                .fillsLeft()
                .complete();
    }

    @Test
    void moreSuppliesCoverMoreAndTheLeastThatIsEnoughIsTaken() {
        CampPlan plan =
                plan(request(List.of(use("small", 2, 20, 90, 150), use("large", 5, 40, 110, 150)), 14, 10, 0.6, 0.9));
        CampOption before = plan.options().get(0);
        for (CampOption option : plan.options()) {
            assertThat(option.chanceAll()).isGreaterThanOrEqualTo(before.chanceAll());
            assertThat(option.fillsMade().middle())
                    .isGreaterThanOrEqualTo(before.fillsMade().middle());
            assertThat(option.daysCovered().high90()).isLessThanOrEqualTo(14);
            before = option;
        }
        assertThat(before.chanceAll()).isGreaterThanOrEqualTo(0.9);
        assertThat(plan.options().get(plan.options().size() - 2).chanceAll()).isLessThan(0.9);
        assertThat(plan.inWords())
                .matches(
                        "Fills wanted: \\d+ \\(.*\\)\\. Take \\d+ supplies: every bottle can be finished with a chance of (9\\d|over 99) %;"
                                + " days covered: .* of 14\\.");
        assertThat(plan(request(List.of(FIXED), 10, 8, 1, 0.95)))
                .isEqualTo(plan(request(List.of(FIXED), 10, 8, 1, 0.95)));
    }

    @Test
    void requestsThatCannotBeMeantAreRefusedInASentence() {
        assertThat(refused(request(List.of(FIXED), 0, 8, 1, 0.9)))
                .startsWith("The number of days (0) must be 1 to 100.");
        assertThat(refused(request(List.of(FIXED), 5, 0, 1, 0.9)))
                .startsWith("The number of pilots (0) must be 1 to 500.");
        assertThat(refused(request(List.of(FIXED), 5, 8, 1, 1)))
                .startsWith("The chance wanted that every bottle can be finished (1) must be 0.01 to 0.999.");
        assertThat(refused(request(List.of(use("high", 3, 20, 20, 220)), 5, 8, 1, 0.9)))
                .startsWith(
                        "The target of bottle high must be below the reading of the supplies, or they can never finish it.");
        assertThat(refused(request(List.of(FIXED), 100, 500, 1, 0.9)))
                .startsWith("The number of fills to be expected (25,000) must be 0 to 5,000.");
    }

    private static String refused(CampRequest request) {
        CampOutcome outcome = PlanningACamp.plan(request);
        assertThat(outcome).isInstanceOf(CampOutcome.Refused.class);
        return ((CampOutcome.Refused) outcome).why().inWords(ShownUnits.METRIC);
    }
}
