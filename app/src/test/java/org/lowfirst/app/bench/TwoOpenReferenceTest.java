package org.lowfirst.app.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command.RecordTwoOpenTogether;
import org.lowfirst.station.Command.TakeReading;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StandFact;
import org.lowfirst.station.SupplyId;

/**
 * Two supplies open together, against pressures and litres computed outside the project with CoolProp 8.0.0 (Schmidt and
 * Wagner): 50 L each, 20 C, surroundings at 1.013 bar; litres at 15 C and 1.01325 bar. At low pressure against the closed form
 * of the ideal gas, p = (p1 V1 + p2 V2) / (V1 + V2).
 */
class TwoOpenReferenceTest {

    /** Where 118 and 190 bar meet [bar, gauge]; printed 153.5050. */
    private static final double LEVEL_118_190 = 153.505;

    /** What goes over from the one at 190 [L]; printed 1872.23. */
    private static final double MOVED_118_190 = 1_872.23;

    /** Gas above 150 bar before, less that after [L]; printed 1688.97. */
    private static final double LOST_118_190 = 1_688.97;

    /** The second decimal of the printed pressures, and what the equations of state differ in their solvers. */
    private static final double HALF_A_DIGIT = 0.005;

    @TempDir
    private Path directory;

    private Station station;

    @BeforeEach
    void open() {
        station = Station.at(directory, "20");
        station.bottle("M-03", "5", "40");
    }

    @AfterEach
    void close() {
        station.close();
    }

    @Test
    void theyMeetWhereTheRealGasDoes() {
        station.supply("A", "62");
        SupplyId b = station.supply("B", "118");
        SupplyId c = station.supply("C", "190");
        TwoOpenReport report = together(b, c, null, null);
        assertThat(report.level().toBar()).isCloseTo(LEVEL_118_190, within(HALF_A_DIGIT));
        assertThat(report.firstBefore().toBar()).isCloseTo(118, within(1e-6));
        assertThat(report.secondBefore().toBar()).isCloseTo(190, within(1e-6));
        assertThat(report.firstNow()).isEqualTo(report.secondNow());
        assertThat(report.firstNow().toBar()).isCloseTo(report.level().toBar(), within(1e-9));
        assertThat(litres(report.moved())).isCloseTo(MOVED_118_190, within(0.001 * MOVED_118_190));
        assertThat(station.bank().get(0)).isCloseTo(62, within(1e-6));
    }

    @Test
    void whatItCostIsTheGasAboveTheStopAndTheFillsLeft() {
        station.supply("A", "62");
        SupplyId b = station.supply("B", "118");
        SupplyId c = station.supply("C", "190");
        int before = left();
        TwoOpenReport.Cost cost =
                Objects.requireNonNull(together(b, c, null, null).cost());
        assertThat(cost.before().fills().complete()).isEqualTo(before);
        assertThat(cost.after().fills().complete()).isEqualTo(left()).isLessThan(before);
        assertThat(litres(cost.lost())).isCloseTo(LOST_118_190, within(0.001 * LOST_118_190));
    }

    @Test
    void atLowPressureTheyMeetAtTheWeightedMean() {
        SupplyId a = station.supply("A", "1");
        SupplyId b = station.supply("B", "4");
        double ideal = (1.0 * 50 + 4.0 * 50) / 100;
        assertThat(together(a, b, null, null).level().toBar()).isCloseTo(ideal, within(0.002 * ideal));
    }

    @Test
    void readingsAfterwardsWinOverTheReckoning() {
        SupplyId b = station.supply("B", "118");
        SupplyId c = station.supply("C", "190");
        TwoOpenReport report = together(b, c, station.reads("130"), station.reads("175"));
        assertThat(report.level().toBar()).isCloseTo(LEVEL_118_190, within(HALF_A_DIGIT));
        assertThat(report.firstNow().toBar()).isCloseTo(130, within(1e-6));
        assertThat(report.secondNow().toBar()).isCloseTo(175, within(1e-6));
        assertThat(station.bank().get(1)).isCloseTo(175, within(1e-6));
    }

    @Test
    void oneGaugeReadIsTakenForBoth() {
        SupplyId b = station.supply("B", "118");
        SupplyId c = station.supply("C", "190");
        TwoOpenReport report = together(b, c, station.reads("150"), null);
        assertThat(report.secondNow().toBar()).isCloseTo(150, within(1e-6));
    }

    @Test
    void theReportIsByTheBankAsItStoodThenWhateverCameSince() {
        SupplyId b = station.supply("B", "118");
        SupplyId c = station.supply("C", "190");
        Instant then = station.clock.instant();
        long seq = enter(b, c, null, null);
        TwoOpenReport first =
                station.benches.weighingTwoOpen().findReport(Station.BENCH, seq).orElseThrow();
        station.clock.set(then.plusSeconds(600));
        station.recorded(station.benches
                .takingReadings()
                .take(Station.BENCH, new TakeReading(c, station.reads("100")), station.submission()));
        station.recorded(station.benches
                .keepingTheBank()
                .stand(Station.BENCH, new StandFact.SupplyHeldBack(b, "later"), station.submission()));
        assertThat(station.benches.weighingTwoOpen().findReport(Station.BENCH, seq))
                .contains(first);
    }

    @Test
    void thereIsNoReportOnAnyOtherEntry() {
        station.supply("B", "118");
        assertThat(station.benches.weighingTwoOpen().findReport(Station.BENCH, 1))
                .isEmpty();
        assertThat(station.benches.weighingTwoOpen().findReport(Station.BENCH, 99))
                .isEmpty();
    }

    private TwoOpenReport together(
            SupplyId one, SupplyId other, @Nullable Reading after, @Nullable Reading otherAfter) {
        long seq = enter(one, other, after, otherAfter);
        return station.benches.weighingTwoOpen().findReport(Station.BENCH, seq).orElseThrow();
    }

    private long enter(SupplyId one, SupplyId other, @Nullable Reading after, @Nullable Reading otherAfter) {
        return station.recorded(station.benches
                        .keepingTheBank()
                        .recordTwoOpenTogether(
                                Station.BENCH,
                                new RecordTwoOpenTogether(one, other, after, otherAfter),
                                station.submission()))
                .get(0)
                .seq();
    }

    /** Fills left of the usual bottle: found at a quarter of its target, 37.5 of 150 bar. */
    private int left() {
        return ((FillPlan) station.benches
                        .planningAFill()
                        .plan(Station.BENCH, new BottleId("bottle-M-03"), Station.bar("150"), station.reads("37.5")))
                .fillsLeft()
                .complete();
    }

    private static double litres(Amount amount) {
        return Oxygen.schmidtWagner()
                .freeVolume(amount, ReferenceCondition.ISO_15C_1ATM)
                .toLitres();
    }
}
