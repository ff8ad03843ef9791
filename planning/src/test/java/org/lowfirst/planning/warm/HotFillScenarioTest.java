package org.lowfirst.planning.warm;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.ReferenceRule;

/**
 * The hot fill and the morning after, invented: 2.0 L rated 200 bar at 15 C, shut at 200 bar with the gas at 58 C, hangar 18 C.
 * Expected figures computed outside this project with the Schmidt and Wagner equation. Within 1 bar and 1.5 %.
 */
class HotFillScenarioTest {

    private StopPlan plan;

    @BeforeEach
    void planIt() {
        plan = StopAndSettle.plan(new StopRequest(
                        Shop.bottle(2.0, 200),
                        new GasNow.Stated(GaugePressure.ofBar(200), Temperature.ofCelsius(58)),
                        Shop.bench(18)))
                .orElseThrow();
    }

    @Test
    void itSettlesNear166BarAnd82PerCent() {
        assertThat(plan.ifShutNow().atBench().toBar()).isCloseTo(166, within(1.0));
        assertThat(plan.ifShutNow().freeVolume().toLitres()).isCloseTo(350, within(0.015 * 350));
        assertThat(plan.ifShutNow().percentFull()).isCloseTo(82, within(0.5));
    }

    @Test
    void theValveIsToBeShutNowAndNotAboveTheMarkedPressure() {
        assertThat(plan.shutNow()).isTrue();
        assertThat(plan.stop().reading().toBar()).isEqualTo(200.0);
        assertThat(plan.stop().why()).isEqualTo(StopReason.SERVICE_PRESSURE);
    }

    @Test
    void waitThenTopUp() {
        assertThat(plan.wait_s().orElseThrow()).isBetween(600.0, 4 * 3600.0);
        assertThat(plan.topUp().worthwhile()).isTrue();
        assertThat(plan.topUp().fillTo().toBar()).isLessThanOrEqualTo(200.0).isCloseTo(200.0, within(0.001));
    }

    @Test
    void aFullBottleReads203At18CAnd186At2C() {
        assertThat(plan.stop().full().toBar()).isCloseTo(203, within(1.0));
        SameGas full = OtherTemperatures.read(
                        AtOtherTemperatures.of(
                                        GaugePressure.ofBar(200), Temperature.ofCelsius(15), Temperature.ofCelsius(2))
                                .in(Volume.ofLitres(2), ReferenceCondition.ISO_15C_1ATM),
                        Oxygen.schmidtWagner())
                .orElseThrow();
        assertThat(full.readings().get(0).reading().toBar()).isCloseTo(186, within(1.0));
        assertThat(requireNonNull(full.contents()).freeVolume().toLitres()).isCloseTo(426, within(0.015 * 426));
    }

    /** Next morning at 2 C: 153 is the cold, 139 is 14 bar below it. */
    @Test
    void theMorningAfterItReads153() {
        SameGas morning = OtherTemperatures.read(
                        AtOtherTemperatures.of(
                                plan.ifShutNow().atBench(), Temperature.ofCelsius(18), Temperature.ofCelsius(2)),
                        Oxygen.schmidtWagner())
                .orElseThrow();
        double expected = morning.readings().get(0).reading().toBar();
        assertThat(expected).isCloseTo(153, within(1.0));
        assertThat(expected - 139).isCloseTo(14, within(1.0));
    }

    @Test
    void thePlanSaysWhatIsAssumed() {
        assertThat(plan.cautions())
                .contains(
                        Caution.FOLLOW_MARKING_AND_LOCAL_RULES,
                        Caution.OPEN_SLOWLY,
                        Caution.COMPUTED_TEMPERATURE,
                        Caution.ASSUMED_WALL);
        assertThat(plan.now().wallAssumed()).isTrue();
        assertThat(plan.request().bench().rule()).isEqualTo(ReferenceRule.EU);
    }
}
