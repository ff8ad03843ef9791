package org.lowfirst.planning.warm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.BottleToFill;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.FillPlanner;
import org.lowfirst.planning.FillRequest;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.SupplyState;
import org.lowfirst.planning.Turn;
import org.lowfirst.planning.warm.FillInTime.PaceOutcome;
import org.lowfirst.planning.warm.Leg.Kind;
import org.lowfirst.transfer.warm.RiseRate;
import org.lowfirst.transfer.warm.WarmEnding;
import org.lowfirst.transfer.warm.WarmRefusal;

class FillInTimeTest {

    private static FillSchedule plan(FillInTimeRequest request) {
        return FillInTime.plan(request).orElseThrow();
    }

    @Test
    void theLowestSupplyIsOpenedFirstAndEachLegFollowsTheOneBefore() {
        FillSchedule schedule = plan(Shop.fill(13.7, 40, 190, 62, 118));
        assertThat(schedule.legs().stream()
                        .filter(leg -> leg.kind() == Kind.STAGE)
                        .map(Leg::supply))
                .containsExactly("S2", "S3", "S1");
        assertThat(schedule.legs().stream().map(Leg::kind))
                .containsExactly(Kind.STAGE, Kind.CHANGEOVER, Kind.STAGE, Kind.CHANGEOVER, Kind.STAGE);
        for (int i = 1; i < schedule.legs().size(); i++) {
            assertThat(schedule.legs().get(i).from_s())
                    .isEqualTo(schedule.legs().get(i - 1).to_s());
            assertThat(schedule.legs().get(i).bottle().before().pascals())
                    .isCloseTo(schedule.legs().get(i - 1).bottle().after().pascals(), within(1.0));
        }
        assertThat(schedule.total_s()).isEqualTo(schedule.legs().get(4).to_s());
    }

    @Test
    void theOneUsedFirstIsOpenedBeforeThoseOfLowerRank() {
        FillInTimeRequest byRank = Shop.fill(13.7, 40, 190, 62, 118);
        List<TimedSupply> bank = new ArrayList<>(byRank.bank());
        bank.set(2, bank.get(2).in(Turn.FIRST));
        bank.set(1, bank.get(1).in(Turn.HELD_BACK));
        FillSchedule schedule =
                plan(new FillInTimeRequest(bank, byRank.bottle(), byRank.reading(), byRank.bench(), byRank.pace()));
        assertThat(schedule.legs().stream()
                        .filter(leg -> leg.kind() == Kind.STAGE)
                        .map(Leg::supply))
                .containsExactly("S3", "S1");
    }

    @Test
    void aSupplyThatIsNotAboveTheBottleStaysShut() {
        FillSchedule schedule = plan(Shop.fill(13.7, 80, 62, 118));
        assertThat(schedule.legs().stream().map(Leg::supply)).containsExactly("S2");
    }

    @Test
    void theGaugeNeverShowsMoreThanTheMarkedPressureAndNeverRisesFasterThanAsked() {
        FillSchedule schedule = plan(Shop.fill(13.7, 40, 62, 118, 190, 230));
        SchedulePoint before = schedule.series().get(0);
        for (SchedulePoint point : schedule.series()) {
            assertThat(point.bottle().toBar()).isLessThanOrEqualTo(200.0 + 1e-6);
            double seconds = point.seconds() - before.seconds();
            double most = before.bottle().toBar() + 13.7 / 60.0 * seconds + 1e-4;
            assertThat(point.bottle().toBar()).isLessThanOrEqualTo(most);
            before = point;
        }
        assertThat(schedule.complete()).isTrue();
        assertThat(schedule.lastReading().toBar()).isCloseTo(200.0, within(1e-6));
        assertThat(schedule.settled().percentFull()).isBetween(85.0, 99.0);
    }

    @Test
    void theSeriesHasTheLegsMarkedInOrder() {
        FillSchedule schedule = plan(Shop.fill(13.7, 40, 62, 118, 190));
        int leg = 0;
        double seconds = 0;
        for (SchedulePoint point : schedule.series()) {
            assertThat(point.leg()).isBetween(leg, leg + 1);
            assertThat(point.seconds()).isGreaterThanOrEqualTo(seconds);
            leg = point.leg();
            seconds = point.seconds();
            Leg of = schedule.legs().get(leg);
            assertThat(point.seconds()).isBetween(of.from_s(), of.to_s());
            assertThat(point.supply() != null).isEqualTo(of.kind() == Kind.STAGE);
        }
        assertThat(leg).isEqualTo(schedule.legs().size() - 1);
    }

    @Test
    void fasterIsSoonerHotterAndEndsEmptier() {
        List<RiseRate> rates = List.of(
                RiseRate.ofBarPerMinute(2),
                RiseRate.ofBarPerMinute(5),
                RiseRate.ofBarPerMinute(13.7),
                RiseRate.ofBarPerMinute(40));
        List<PaceOutcome> outcomes = FillInTime.compare(Shop.fill(13.7, 40, 62, 118, 190, 230), rates)
                .orElseThrow();
        for (int i = 1; i < outcomes.size(); i++) {
            assertThat(outcomes.get(i).total_s()).isLessThan(outcomes.get(i - 1).total_s());
            assertThat(outcomes.get(i).peakBottleGas())
                    .isGreaterThan(outcomes.get(i - 1).peakBottleGas());
            assertThat(outcomes.get(i).lowestSupplyGas())
                    .isLessThan(outcomes.get(i - 1).lowestSupplyGas());
            assertThat(outcomes.get(i).settled().percentFull())
                    .isLessThan(outcomes.get(i - 1).settled().percentFull());
        }
    }

    @Test
    void restsAndTopUpsFillFurther() {
        FillInTimeRequest request = Shop.fill(13.7, 40, 62, 118, 190, 230);
        FillSchedule once = plan(request);
        FillSchedule topped = plan(request.with(request.pace().toppedUp(2, 3600)));
        assertThat(topped.legs().stream().filter(leg -> leg.kind() == Kind.REST))
                .hasSize(2);
        assertThat(topped.settled().percentFull()).isGreaterThan(once.settled().percentFull() + 3);
        assertThat(topped.settled().atReference().toBar()).isLessThanOrEqualTo(200.0);
    }

    @Test
    void compensationFillsInOneGo() {
        FillInTimeRequest request = Shop.fill(13.7, 40, 62, 118, 190, 230);
        FillSchedule schedule = plan(request.with(new Compensation.On("bench table 3", "R. Hollin")));
        assertThat(schedule.legs().get(schedule.legs().size() - 1).ending()).isEqualTo(WarmEnding.FULL);
        assertThat(schedule.settled().percentFull()).isCloseTo(100.0, within(1e-6));
        assertThat(schedule.lastReading().toBar()).isGreaterThan(205.0);
        assertThat(schedule.cautions()).contains(Caution.COMPENSATION_ON);
    }

    @Test
    void aTargetIsMetWhenSettled() {
        FillSchedule schedule = plan(Shop.fill(13.7, 40, 62, 118, 190).withTarget(GaugePressure.ofBar(150)));
        assertThat(schedule.settled().atBench().toBar()).isCloseTo(150.0, within(1e-5));
        assertThat(schedule.lastReading().toBar()).isGreaterThan(152.0);
        assertThat(schedule.percentOfWanted()).isCloseTo(100.0, within(1e-6));
    }

    @Test
    void theGasOfTheHoseIsVented() {
        FillInTimeRequest request = Shop.fill(13.7, 40, 62, 118, 190);
        assertThat(plan(request).vented().moles()).isZero();
        assertThat(plan(request.withHose(Volume.ofLitres(0.1))).vented().moles())
                .isBetween(0.5, 1.0);
    }

    /** At 0.05 bar a minute the gas stays within a degree of the bench, worth half a bar. */
    @Test
    void verySlowIsTheIsothermalPlan() {
        FillSchedule schedule = plan(Shop.fill(0.05, 40, 62, 118, 190).withTarget(GaugePressure.ofBar(150)));
        WarmBench bench = Shop.bench(18);
        FillPlanner planner =
                FillPlanner.under(Conditions.of(bench.model().equation(), bench.temperature(), ReferenceRule.EU));
        FillPlan plan = (FillPlan) planner.plan(new FillRequest(
                List.of(supply("S1", 62), supply("S2", 118), supply("S3", 190)),
                new BottleToFill(
                        "W-7",
                        Volume.ofLitres(5),
                        GaugePressure.ofBar(40),
                        GaugePressure.ofBar(150),
                        GaugePressure.ofBar(200))));
        List<Leg> stages =
                schedule.legs().stream().filter(leg -> leg.kind() == Kind.STAGE).toList();
        assertThat(stages).hasSameSizeAs(plan.fill().steps());
        for (int i = 0; i < stages.size(); i++) {
            assertThat(stages.get(i).bottle().after().toBar())
                    .isCloseTo(plan.fill().steps().get(i).bottle().after().toBar(), within(0.6));
        }
    }

    private static SupplyState supply(String name, double bar) {
        return new SupplyState(name, Volume.ofLitres(50), GaugePressure.ofBar(bar));
    }

    @Test
    void whatCannotBeDoneIsRefused() {
        assertThat(Shop.refusal(FillInTime.plan(Shop.fill(13.7, 190, 62, 118))))
                .isEqualTo(new WarmRefusal.MustRise(
                        "highest reading of the bank", GaugePressure.ofBar(118), GaugePressure.ofBar(190)));
        assertThat(Shop.refusal(FillInTime.plan(Shop.fill(13.7, 100, 190).withTarget(GaugePressure.ofBar(90))))
                        .code())
                .isEqualTo("must-rise");
        assertThat(Shop.refusal(FillInTime.plan(Shop.fill(13.7, 100))).code()).isEqualTo("number-out-of-range");
        assertThat(Shop.refusal(FillInTime.plan(Shop.fill(5000, 100, 190))).code())
                .isEqualTo("number-out-of-range");
        assertThat(Shop.refusal(FillInTime.plan(Shop.fill(13.7, 100, 190).withHose(Volume.ofLitres(50))))
                        .code())
                .isEqualTo("number-out-of-range");
        FillInTimeRequest hot = Shop.fill(13.7, 100, 190);
        assertThat(Shop.refusal(FillInTime.plan(new FillInTimeRequest(
                                hot.bank(), hot.bottle(), hot.reading(), Shop.bench(95), hot.pace())))
                        .code())
                .isEqualTo("temperature-out-of-range");
    }

    /** At -20 C a bottle marked 200 bar at 15 C must not read more than 161 bar. */
    @Test
    void aBottleThatHoldsMoreThanItsMarkingAllowsIsRefused() {
        FillInTimeRequest mild = Shop.fill(13.7, 175, 190);
        WarmRefusal refusal = Shop.refusal(FillInTime.plan(
                new FillInTimeRequest(mild.bank(), mild.bottle(), mild.reading(), Shop.bench(-20), mild.pace())));
        assertThat(refusal).isInstanceOf(WarmRefusal.PressureOutOfRange.class);
        assertThat(((WarmRefusal.PressureOutOfRange) refusal).highest().toBar()).isCloseTo(161.4, within(0.06));
    }

    @Test
    void aBenchInDeepFrostIsPlannedToo() {
        FillInTimeRequest mild = Shop.fill(40, 20, 62, 118, 140);
        FillSchedule schedule =
                plan(new FillInTimeRequest(mild.bank(), mild.bottle(), mild.reading(), Shop.bench(-45), mild.pace()));
        assertThat(schedule.lowestSupplyGas().kelvin()).isBetween(180.0, 228.0);
    }

    @Test
    void theSameRequestGivesTheSameSchedule() {
        assertThat(plan(Shop.fill(13.7, 40, 62, 118))).isEqualTo(plan(Shop.fill(13.7, 40, 62, 118)));
    }

    @Test
    void warmerBenchesEndWarmer() {
        FillInTimeRequest cold = Shop.fill(13.7, 40, 62, 118, 190);
        FillInTimeRequest warm =
                new FillInTimeRequest(cold.bank(), cold.bottle(), cold.reading(), Shop.bench(35), cold.pace());
        assertThat(plan(warm).peakBottleGas()).isGreaterThan(plan(cold).peakBottleGas());
        assertThat(plan(cold).peakBottleGas()).isGreaterThan(Temperature.ofCelsius(20));
    }
}
