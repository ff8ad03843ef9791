package org.lowfirst.transfer.warm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.Density;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;

class WarmStageTest {

    private final WarmModel model = WarmModel.oxygen();

    private static WarmState bottle(double psi) {
        return Workbench.bottle(
                2.9,
                psi,
                Walls.assumed(WallMaterial.ALUMINIUM, Volume.ofLitres(2.9), GaugePressure.ofPsi(2015)),
                Contact.CONVECTION);
    }

    private static WarmSource supply(double psi) {
        return new WarmSource.FromSupply(Workbench.bottle(
                49,
                psi,
                Walls.assumed(WallMaterial.STEEL, Volume.ofLitres(49), GaugePressure.ofPsi(2400)),
                Contact.CONVECTION));
    }

    private WarmFill fill(WarmSource source, WarmState bottle, Opening opening, double stopPsi) {
        return model.fill(Workbench.stage(source, bottle, opening, stopPsi)).orElseThrow();
    }

    private static GaugePressure lastBottle(WarmFill fill) {
        return fill.series().get(fill.series().size() - 1).bottle();
    }

    @Test
    void theValveIsShutExactlyAtTheStop() {
        WarmFill fill = fill(supply(2200), bottle(200), Workbench.rising(200), 2015);
        assertThat(fill.ending()).isEqualTo(WarmEnding.STOP);
        assertThat(lastBottle(fill).pascals())
                .isCloseTo(GaugePressure.ofPsi(2015).pascals(), within(0.01));
    }

    @Test
    void aSteadyRiseTakesTheTimeItSays() {
        WarmFill fill = fill(supply(2200), bottle(200), Workbench.rising(200), 1800);
        assertThat(fill.seconds()).isCloseTo(1600.0 / 200.0 * 60.0, within(1e-3));
        WarmPoint middle = fill.series().get(fill.series().size() / 2);
        assertThat(middle.bottle().toPsi()).isCloseTo(200 + 200.0 / 60.0 * middle.seconds(), within(0.001));
    }

    @Test
    void aSupplyThatIsNotFullEnoughEndsEqual() {
        WarmFill fill = fill(supply(1200), bottle(200), Workbench.rising(200), 2015);
        WarmPoint last = fill.series().get(fill.series().size() - 1);
        assertThat(fill.ending()).isEqualTo(WarmEnding.EQUAL);
        assertThat(last.supply().pascals() - last.bottle().pascals()).isCloseTo(0.0, within(0.01));
    }

    @Test
    void aStopByDensityShutsWhenTheBottleHoldsTheGas() {
        Density most = Workbench.OXYGEN
                .density(
                        GaugePressure.ofPsi(1500).toAbsolute(Workbench.AT_70F.pressure()),
                        Workbench.AT_70F.temperature())
                .orElseThrow();
        WarmFill fill = model.fill(new WarmStage(
                        supply(2200),
                        bottle(200),
                        Workbench.rising(200),
                        new Stop(GaugePressure.ofPsi(2015), most),
                        Workbench.AT_70F,
                        new Sampling(5, 86_400)))
                .orElseThrow();
        assertThat(fill.ending()).isEqualTo(WarmEnding.FULL);
        assertThat(Workbench.settledPsi(fill.bottle())).isCloseTo(1500.0, within(1e-4));
        assertThat(lastBottle(fill).toPsi()).isGreaterThan(1510);
    }

    @Test
    void nothingMovesFromLowToHighOrBeyondTheStop() {
        WarmFill low = fill(supply(300), bottle(500), Workbench.rising(200), 2015);
        WarmFill there = fill(supply(2200), bottle(2015), Workbench.rising(200), 2015);
        for (WarmFill fill : List.of(low, there)) {
            assertThat(fill.ending()).isEqualTo(WarmEnding.NOTHING_MOVED);
            assertThat(fill.balance().moved().moles()).isZero();
            assertThat(fill.seconds()).isZero();
            assertThat(fill.series()).hasSize(1);
        }
    }

    @Test
    void timeCanRunOut() {
        WarmFill fill = model.fill(new WarmStage(
                        supply(2200),
                        bottle(200),
                        Workbench.rising(200),
                        Stop.at(GaugePressure.ofPsi(2015)),
                        Workbench.AT_70F,
                        new Sampling(5, 60)))
                .orElseThrow();
        assertThat(fill.ending()).isEqualTo(WarmEnding.TIME_UP);
        assertThat(lastBottle(fill).toPsi()).isCloseTo(400.0, within(1e-3));
    }

    @Test
    void fasterIsHotterAndEndsEmptier() {
        double hottest = 0;
        double fullest = Double.POSITIVE_INFINITY;
        for (double psiPerMinute : new double[] {20, 50, 100, 200, 500, 2000}) {
            WarmFill fill = fill(supply(2200), bottle(200), Workbench.rising(psiPerMinute), 2015);
            assertThat(fill.peakBottleGas().kelvin()).isGreaterThan(hottest);
            assertThat(Workbench.settledPsi(fill.bottle())).isLessThan(fullest);
            hottest = fill.peakBottleGas().kelvin();
            fullest = Workbench.settledPsi(fill.bottle());
        }
    }

    @Test
    void theSupplyCoolsWhileItGives() {
        WarmFill fill = fill(supply(2200), bottle(200), Workbench.rising(200), 2015);
        assertThat(fill.lowestSupplyGas()).isLessThan(Workbench.AT_70F.temperature());
    }

    @Test
    void aWideOpenValveIsFasterThanTheRiseAndHotter() {
        WarmFill wide = fill(supply(2200), bottle(200), new Opening.Fixed(Workbench.WIDE), 2015);
        WarmFill slow = fill(supply(2200), bottle(200), Workbench.rising(200), 2015);
        assertThat(wide.seconds()).isLessThan(0.1 * slow.seconds());
        assertThat(wide.peakBottleGas()).isGreaterThan(slow.peakBottleGas());
    }

    @Test
    void theSeriesRunsFromStartToEndAtItsInterval() {
        WarmFill fill = fill(supply(2200), bottle(200), Workbench.rising(200), 2015);
        List<WarmPoint> series = fill.series();
        for (int i = 0; i < series.size() - 1; i++) {
            assertThat(series.get(i).seconds()).isEqualTo(5.0 * i);
        }
        assertThat(series.get(series.size() - 1).seconds()).isEqualTo(fill.seconds());
        assertThat(series.get(0).bottle().toPsi()).isCloseTo(200.0, within(1e-6));
    }

    @Test
    void theSameStageGivesTheSameResult() {
        WarmFill once = fill(supply(2200), bottle(200), Workbench.rising(200), 2015);
        WarmFill again = fill(supply(2200), bottle(200), Workbench.rising(200), 2015);
        assertThat(again).isEqualTo(once);
    }

    @Test
    void gasThatCannotBeComputedIsRefused() {
        WarmSource cold = new WarmSource.Constant(
                GaugePressure.ofBar(200).toAbsolute(Workbench.AT_70F.pressure()), new Temperature(150));
        Answer<WarmFill> answer = model.fill(Workbench.stage(cold, bottle(200), Workbench.rising(200), 2015));
        assertThat(answer).isInstanceOf(Answer.Refused.class);
        assertThat(((Answer.Refused<WarmFill>) answer).refusal().code()).isEqualTo("no-answer");
    }
}
