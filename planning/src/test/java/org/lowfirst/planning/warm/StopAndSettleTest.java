package org.lowfirst.planning.warm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Mass;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.warm.GasNow.TimedReading;
import org.lowfirst.transfer.warm.WallMaterial;
import org.lowfirst.transfer.warm.WarmRefusal;

class StopAndSettleTest {

    private static final double ROUNDING_BAR = 1e-12;

    private static final Compensation ON = new Compensation.On("bench table 3", "R. Hollin, bench officer");

    private static StopPlan plan(StopRequest request) {
        return StopAndSettle.plan(request).orElseThrow();
    }

    private static StopRequest stated(double benchC, double bar, double gasC) {
        return new StopRequest(
                Shop.bottle(2, 200),
                new GasNow.Stated(GaugePressure.ofBar(bar), Temperature.ofCelsius(gasC)),
                Shop.bench(benchC));
    }

    private static GasNow.Filling filling(double... bars) {
        List<TimedReading> readings = new ArrayList<>();
        for (int i = 0; i < bars.length; i++) {
            readings.add(new TimedReading(60.0 * i, GaugePressure.ofBar(bars[i])));
        }
        return new GasNow.Filling(readings);
    }

    /** Seeded random benches, bottles and gases. */
    @Test
    void withoutCompensationTheStopIsNeverAboveTheMarkedPressureAndSettlesWithinIt() {
        Random random = new Random(41);
        for (int i = 0; i < 300; i++) {
            double service = 100 + 200 * random.nextDouble();
            WarmBench bench = WarmBench.oxygen(
                    Temperature.ofCelsius(-30 + 75 * random.nextDouble()),
                    random.nextBoolean() ? ReferenceRule.US : ReferenceRule.EU);
            Temperature gas = new Temperature(bench.temperature().kelvin() - 5 + 60 * random.nextDouble());
            StopPlan plan = plan(new StopRequest(
                    Shop.bottle(1 + 9 * random.nextDouble(), service),
                    new GasNow.Stated(GaugePressure.ofBar(50), gas),
                    bench));
            assertThat(plan.stop().reading().toBar()).isLessThanOrEqualTo(service + ROUNDING_BAR);
            assertThat(plan.ifShutAtStop().atReference().toBar()).isLessThanOrEqualTo(service + ROUNDING_BAR);
            assertThat(plan.ifShutAtStop().atBench().toBar()).isLessThanOrEqualTo(service + ROUNDING_BAR);
            assertThat(plan.stop().developed().within()).isTrue();
            assertThat(plan.cautions()).doesNotContain(Caution.COMPENSATION_ON);
        }
    }

    @Test
    void withCompensationTheSettledPressureReachesTheMarkedOneAndNeverExceedsIt() {
        Random random = new Random(42);
        for (int i = 0; i < 300; i++) {
            double service = 100 + 150 * random.nextDouble();
            WarmBench bench = WarmBench.oxygen(
                    Temperature.ofCelsius(-30 + 75 * random.nextDouble()),
                    random.nextBoolean() ? ReferenceRule.US : ReferenceRule.EU);
            Temperature gas = new Temperature(bench.temperature().kelvin() + 40 * random.nextDouble());
            StopPlan plan = plan(new StopRequest(
                            Shop.bottle(1 + 9 * random.nextDouble(), service),
                            new GasNow.Stated(GaugePressure.ofBar(50), gas),
                            bench)
                    .with(ON));
            assertThat(plan.stop().why()).isEqualTo(StopReason.FULL);
            assertThat(plan.ifShutAtStop().atReference().toBar())
                    .isLessThanOrEqualTo(service + ROUNDING_BAR)
                    .isCloseTo(service, within(1e-6));
            assertThat(plan.stop().developed().reading())
                    .isLessThanOrEqualTo(plan.stop().developed().limit());
            assertThat(plan.cautions()).contains(Caution.COMPENSATION_ON);
        }
    }

    @Test
    void compensationMayRaiseTheStopAboveTheMarkedPressureWhileTheGasIsWarm() {
        StopPlan off = plan(stated(18, 190, 50));
        StopPlan on = plan(stated(18, 190, 50).with(ON));
        assertThat(off.stop().reading().toBar()).isEqualTo(200.0);
        assertThat(on.stop().reading().toBar()).isGreaterThan(225.0);
        assertThat(on.shutNow()).isFalse();
    }

    @Test
    void compensationNeedsTheRuleAndThePerson() {
        for (Compensation nameless : List.of(new Compensation.On(" ", "R. Hollin"), new Compensation.On("table", ""))) {
            assertThat(Shop.refusal(StopAndSettle.plan(stated(18, 190, 50).with(nameless)))
                            .code())
                    .isEqualTo("name-missing");
        }
    }

    @Test
    void aTargetBelowFullDecidesTheStop() {
        StopRequest request = stated(18, 100, 40);
        StopPlan plan = plan(new StopRequest(
                request.bottle(), request.now(), request.bench(), Compensation.OFF, GaugePressure.ofBar(150)));
        assertThat(plan.stop().why()).isEqualTo(StopReason.TARGET);
        assertThat(plan.stop().reading().toBar()).isBetween(155.0, 175.0);
        assertThat(plan.ifShutAtStop().atBench().toBar()).isCloseTo(150.0, within(1e-6));
    }

    /** Aluminium marked 200 of which a book takes 150 only, and a plus sign worth 10 %. */
    @Test
    void whatTheRuleBookPermitsTakesThePlaceOfTheMark() {
        for (double permitted : new double[] {150, 220}) {
            for (Compensation compensation : List.of(Compensation.OFF, ON)) {
                StopRequest marked = stated(15, 100, 45).with(compensation);
                StopPlan plan = plan(new StopRequest(
                        marked.bottle().permitting(GaugePressure.ofBar(permitted)),
                        marked.now(),
                        marked.bench(),
                        compensation,
                        null));
                assertThat(plan.stop().full().toBar()).isCloseTo(permitted, within(1e-6));
                assertThat(plan.ifShutAtStop().atReference().toBar()).isLessThanOrEqualTo(permitted + ROUNDING_BAR);
                if (compensation == ON) {
                    assertThat(plan.stop().why()).isEqualTo(StopReason.RULE_BOOK);
                    assertThat(plan.stop().reading().toBar()).isGreaterThan(permitted + 10);
                } else {
                    assertThat(plan.stop().why()).isEqualTo(StopReason.RULE_BOOK_READING);
                    assertThat(plan.stop().reading().toBar()).isCloseTo(permitted, within(1e-9));
                }
            }
        }
    }

    @Test
    void aBookThatPermitsTheMarkChangesNothing() {
        StopRequest marked = stated(15, 100, 45).with(ON);
        StopPlan plan = plan(new StopRequest(
                marked.bottle().permitting(GaugePressure.ofBar(200)), marked.now(), marked.bench(), ON, null));
        assertThat(plan.stop()).isEqualTo(plan(marked).stop());
    }

    /** Where the gauge may go above the mark, gas 8 K colder than computed still settles within it. */
    @Test
    void aComputedTemperatureIsNotReliedUponToTheLastKelvin() {
        StopRequest request = new StopRequest(Shop.bottle(2, 200), filling(20, 60, 100, 140), Shop.bench(18), ON, null);
        StopPlan plan = plan(request);
        WarmBench bench = request.bench();
        Temperature colder = new Temperature(plan.stop().gas().kelvin() - StopAndSettle.margin_K());
        double settled = bench.gas()
                .density(plan.stop().reading().toAbsolute(bench.ambient()), colder)
                .map(density -> bench.gas()
                        .pressure(density, bench.rule().temperature())
                        .orElseThrow())
                .orElseThrow()
                .toGauge(bench.ambient())
                .toBar();
        assertThat(plan.stop().reading().toBar()).isGreaterThan(205);
        assertThat(settled).isCloseTo(200, within(1e-6));
        assertThat(plan.ifShutAtStop().atReference().toBar()).isBetween(190.0, 199.0);
    }

    @Test
    void aBottleAboutToBeFilledIsTakenToRiseSlowly() {
        StopPlan slow = plan(new StopRequest(
                Shop.bottle(2, 200),
                new GasNow.Opening(GaugePressure.ofBar(20), StopAndSettle.slowRise()),
                Shop.bench(18),
                ON,
                GaugePressure.ofBar(180)));
        assertThat(slow.now().gas()).isEqualTo(Temperature.ofCelsius(18));
        assertThat(slow.stop().gas()).isGreaterThan(Temperature.ofCelsius(26));
        assertThat(slow.stop().reading().toBar()).isBetween(180.1, 195.0);
    }

    /** 131 F and 5/4 govern for a service pressure marked at a temperature far below: the check is real, not only shown. */
    @Test
    void theDevelopedPressureIsChecked() {
        StopPlan plan = plan(new StopRequest(
                        RatedBottle.of("A", Volume.ofLitres(3), GaugePressure.ofPsi(2015), null, null)
                                .orElseThrow(),
                        new GasNow.Stated(GaugePressure.ofPsi(500), Temperature.ofFahrenheit(90)),
                        Shop.usBench(70))
                .with(ON));
        assertThat(plan.stop().developed().at().toFahrenheit()).isCloseTo(131.0, within(0.01));
        assertThat(plan.stop().developed().reading().toPsi()).isCloseTo(2337.33, within(0.02));
        assertThat(plan.stop().developed().limit().toPsi()).isCloseTo(1.25 * 2015, within(1e-9));
        assertThat(plan.stop().developed().reading().toPsi()
                        / plan.stop().developed().limit().toPsi())
                .isCloseTo(0.928, within(0.0005));
    }

    @Test
    void aSettledFullBottleNeedsNeitherWaitNorTopUp() {
        StopPlan plan = plan(stated(15, 200, 15));
        assertThat(plan.shutNow()).isTrue();
        assertThat(plan.ifShutNow().percentFull()).isCloseTo(100.0, within(1e-9));
        assertThat(plan.wait_s()).hasValue(0.0);
        assertThat(plan.topUp().worthwhile()).isFalse();
    }

    @Test
    void aBottleAboveItsMarkedPressureIsPointedOut() {
        StopPlan plan = plan(stated(18, 210, 30));
        assertThat(plan.shutNow()).isTrue();
        assertThat(plan.cautions()).contains(Caution.ABOVE_SERVICE_PRESSURE);
    }

    @Test
    void readingsOfTheFillGiveTheTemperatureOfTheGas() {
        StopPlan fast = plan(new StopRequest(Shop.bottle(2, 200), filling(20, 60, 100, 140), Shop.bench(18)));
        StopPlan slow = plan(new StopRequest(
                Shop.bottle(2, 200), filling(20, 30, 40, 50, 60, 70, 80, 90, 100, 110, 120, 130, 140), Shop.bench(18)));
        assertThat(fast.now().gasComputed()).isTrue();
        assertThat(fast.now().gas()).isGreaterThan(slow.now().gas());
        assertThat(slow.now().gas()).isGreaterThan(Temperature.ofCelsius(18));
        assertThat(slow.now().wall()).isLessThan(slow.now().gas());
        assertThat(fast.ifShutNow().atBench()).isLessThan(slow.ifShutNow().atBench());
        assertThat(fast.stop().gas()).isGreaterThan(fast.now().gas());
    }

    @Test
    void aPauseInTheReadingsCools() {
        StopPlan without = plan(new StopRequest(Shop.bottle(2, 200), filling(20, 60, 100), Shop.bench(18)));
        StopPlan with = plan(new StopRequest(Shop.bottle(2, 200), filling(20, 60, 60, 60, 60, 100), Shop.bench(18)));
        assertThat(with.now().gas()).isLessThan(without.now().gas());
    }

    @Test
    void aFallingSequenceAndATimeThatGoesBackAreRefused() {
        WarmRefusal falls = Shop.refusal(
                StopAndSettle.plan(new StopRequest(Shop.bottle(2, 200), filling(20, 60, 55), Shop.bench(18))));
        assertThat(falls).isEqualTo(new WarmRefusal.SequenceFalls(3, GaugePressure.ofBar(55), GaugePressure.ofBar(60)));
        GasNow back = new GasNow.Filling(List.of(
                new TimedReading(0, GaugePressure.ofBar(20)),
                new TimedReading(60, GaugePressure.ofBar(60)),
                new TimedReading(30, GaugePressure.ofBar(70))));
        assertThat(Shop.refusal(StopAndSettle.plan(new StopRequest(Shop.bottle(2, 200), back, Shop.bench(18)))))
                .isEqualTo(new WarmRefusal.TimeGoesBack(3, 30, 60));
        assertThat(Shop.refusal(StopAndSettle.plan(new StopRequest(Shop.bottle(2, 200), filling(20), Shop.bench(18))))
                        .code())
                .isEqualTo("number-out-of-range");
    }

    @Test
    void temperaturesOutsideTheRangeAreRefused() {
        assertThat(Shop.refusal(StopAndSettle.plan(stated(18, 190, 400))))
                .isEqualTo(new WarmRefusal.TemperatureOutOfRange(
                        "temperature of the gas",
                        Temperature.ofCelsius(400),
                        new Temperature(220),
                        new Temperature(440)));
        assertThat(Shop.refusal(StopAndSettle.plan(stated(90, 190, 100))).code())
                .isEqualTo("temperature-out-of-range");
    }

    @Test
    void aBottleNobodyKnowsIsGivenAnAssumedWallAndAWeighedOneIsNot() {
        RatedBottle unknown = RatedBottle.of("U", Volume.ofLitres(3), GaugePressure.ofBar(200), null, null)
                .orElseThrow();
        RatedBottle weighed = RatedBottle.of(
                        "K", Volume.ofLitres(3), GaugePressure.ofBar(200), WallMaterial.ALUMINIUM, new Mass(3.1))
                .orElseThrow();
        assertThat(unknown.wall().assumed()).isTrue();
        assertThat(weighed.wall().assumed()).isFalse();
        assertThat(Shop.refusal(RatedBottle.of("Z", Volume.ofLitres(3), GaugePressure.ZERO, null, null))
                        .code())
                .isEqualTo("pressure-out-of-range");
        assertThat(Shop.refusal(RatedBottle.of(
                                "Z", Volume.ofLitres(3), GaugePressure.ofBar(200), WallMaterial.STEEL, new Mass(0)))
                        .code())
                .isEqualTo("number-out-of-range");
    }
}
