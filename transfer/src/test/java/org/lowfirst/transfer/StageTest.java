package org.lowfirst.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.Density;
import org.lowfirst.gas.Volume;

final class StageTest {

    private static final Vessel SUPPLY = vessel(50, 300);
    private static final Vessel BOTTLE = vessel(5, 5);

    @Test
    void joiningEqualPressuresMovesNothing() {
        StageResult result = Stage.join(vessel(50, 300), Hose.NONE, vessel(5, 30));
        assertThat(result.ending()).isEqualTo(Ending.NOTHING_MOVED);
        assertThat(result.moved()).isEqualTo(Amount.NONE);
    }

    @Test
    void nothingMovesFromLowToHigh() {
        StageResult result = Stage.join(vessel(50, 100), Hose.NONE, vessel(5, 30));
        assertThat(result)
                .isEqualTo(
                        new StageResult(vessel(50, 100), Hose.NONE, vessel(5, 30), Amount.NONE, Ending.NOTHING_MOVED));
    }

    @Test
    void withoutAStopBothEndAtOneDensity() {
        StageResult result = Stage.join(SUPPLY, Hose.NONE, BOTTLE);
        assertThat(result.ending()).isEqualTo(Ending.EQUAL);
        assertThat(result.supply().density()).isEqualTo(result.bottle().density());
        assertThat(result.moved().moles()).isEqualTo(305.0 / 55 * 5 - 5, within(1e-12));
    }

    @Test
    void theValveIsShutExactlyAtTheStop() {
        StageResult result = Stage.join(SUPPLY, Hose.NONE, BOTTLE, new Density(4000));
        assertThat(result.ending()).isEqualTo(Ending.TARGET);
        assertThat(result.bottle().contents().moles()).isEqualTo(20.0);
        assertThat(result.supply().contents().moles()).isEqualTo(285.0, within(1e-12));
    }

    @Test
    void aStopThatIsJustReachedEndsAtTheTarget() {
        StageResult result = Stage.join(vessel(50, 300), Hose.NONE, vessel(50, 100), new Density(4000));
        assertThat(result.ending()).isEqualTo(Ending.TARGET);
        assertThat(result.supply().density()).isEqualTo(result.bottle().density());
    }

    @Test
    void aBottleAtItsStopGetsNothing() {
        assertThat(Stage.join(SUPPLY, Hose.NONE, vessel(5, 20), new Density(4000))
                        .ending())
                .isEqualTo(Ending.NOTHING_MOVED);
    }

    @Test
    void theHoseTakesItsShareAndKeepsTheSuppliesPressure() {
        Hose hose = new Hose(Volume.ofLitres(1), new Amount(0.05));
        StageResult result = Stage.join(SUPPLY, hose, BOTTLE);
        assertThat(result.bottle().density().molesPerCubicMetre()).isEqualTo(305.05 / 0.056, within(1e-9));
        assertThat(result.hose().contents().moles()).isEqualTo(305.05 / 56, within(1e-12));
    }

    @Test
    void aSupplyThatFillingTheHoseBringsDownToTheBottleIsNotOpened() {
        Hose hose = new Hose(Volume.ofLitres(2), new Amount(0.1));
        StageResult result = Stage.join(vessel(50, 301), hose, vessel(5, 30));
        assertThat(result.ending()).isEqualTo(Ending.NOTHING_MOVED);
        assertThat(result.hose()).isEqualTo(hose);
    }

    @Test
    void ventingTakesTheHoseDownToTheSurroundingsAndCountsTheLoss() {
        Hose.Vented vented = new Hose(Volume.ofLitres(2), new Amount(12.0)).vent(new Density(42));
        assertThat(vented.hose().contents().moles()).isEqualTo(0.084, within(1e-15));
        assertThat(vented.lost().moles()).isEqualTo(11.916, within(1e-12));
    }

    @Test
    void ventingAHoseBelowTheSurroundingsLosesNothing() {
        Hose low = new Hose(Volume.ofLitres(2), new Amount(0.01));
        assertThat(low.vent(new Density(42))).isEqualTo(new Hose.Vented(low, Amount.NONE));
    }

    @Test
    void aVesselWithoutVolumeIsAProgrammingError() {
        assertThatThrownBy(() -> new Vessel(new Volume(0), Amount.NONE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("must be above 0");
        assertThatThrownBy(() -> new Hose(new Volume(0), new Amount(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("must be 0");
    }

    private static Vessel vessel(double litres, double moles) {
        return new Vessel(Volume.ofLitres(litres), new Amount(moles));
    }
}
