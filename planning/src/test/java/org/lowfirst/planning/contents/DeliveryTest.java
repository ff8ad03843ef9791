package org.lowfirst.planning.contents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.contents.BankRanking.Latest;
import org.lowfirst.planning.contents.BankRanking.Ranked;

/** A supply comes with less than a full one; figures by CoolProp 8.0.0, litres at 15 C and 1.013 bar. */
class DeliveryTest {

    private final MeteredCylinder supply = Given.cylinder("P2", 50);
    private final Gauge gauge = Given.gauge("G");

    private Delivery delivered(double bar, double celsius) {
        return Delivery.assess(
                        supply,
                        Given.measured(0, supply, gauge, bar, Given.measured(celsius)),
                        GaugePressure.ofBar(200),
                        Temperature.ofCelsius(15),
                        Given.OXYGEN,
                        Given.ASSUMED.verdicts())
                .orElseThrow();
    }

    @Test
    void aHundredAndFortyEightBarAtSixDegreesIsTwentyTwoPerCentShort() {
        Delivery found = delivered(148, 6);
        assertThat(found.code()).isEqualTo(Delivery.Code.SHORT);
        assertThat(found.fullWouldRead().toBar()).isCloseTo(190.1, within(0.05));
        assertThat(Given.litres15(found.missing_mol())).isCloseTo(2352, within(2.0));
        assertThat(found.missingShare()).isCloseTo(0.221, within(0.0005));
        assertThat(found.chanceOfNoise()).isLessThan(1e-6);
    }

    @Test
    void aFullOneOnAColdDayIsFull() {
        assertThat(delivered(188, 6).code()).isEqualTo(Delivery.Code.FULL);
    }

    @Test
    void aTooFullOneIsSaidToBe() {
        assertThat(delivered(206, 6).code()).isEqualTo(Delivery.Code.OVER_FULL);
    }

    private Latest latest(String name, double litres, double bar, double celsius) {
        MeteredCylinder cylinder = Given.cylinder(name, litres);
        return new Latest(cylinder, Given.measured(0, cylinder, gauge, bar, Given.measured(celsius)));
    }

    private static List<String> names(List<Ranked> ranked) {
        return ranked.stream().map(Ranked::supply).toList();
    }

    /** At 15 C the new supply would read 155: above R at 131 and nothing like the 200 of a full one. */
    @Test
    void theRankComesFromTheReadingAtOneTemperature() {
        BankRanking ranking = new BankRanking(Given.OXYGEN);
        List<Ranked> ranked = ranking.rank(
                        List.of(latest("P2", 50, 148, 6), latest("Q", 50, 97, 15), latest("R", 50, 131, 15)),
                        Temperature.ofCelsius(15))
                .orElseThrow();
        assertThat(names(ranked)).containsExactly("Q", "R", "P2");
        assertThat(ranked.get(2).reading().toBar()).isCloseTo(155.1, within(0.3));
        assertThat(ranked).allMatch(Ranked::aboveNextLowerForCertain);
    }

    /** 133 bar read at 25 C is 127 at 15 C and ranks below 130 read at 15 C: a warmer day must not move a rank. */
    @Test
    void aWarmerDayDoesNotMoveTheRank() {
        List<Ranked> ranked = new BankRanking(Given.OXYGEN)
                .rank(List.of(latest("X", 50, 133, 25), latest("Y", 50, 130, 15)), Temperature.ofCelsius(15))
                .orElseThrow();
        assertThat(names(ranked)).containsExactly("X", "Y");
    }

    @Test
    void nearlyEqualReadingsAreSaidToBeUncertain() {
        List<Ranked> ranked = new BankRanking(Given.OXYGEN)
                .rank(List.of(latest("X", 50, 131, 15), latest("Y", 10, 130, 15)), Temperature.ofCelsius(15))
                .orElseThrow();
        assertThat(names(ranked)).containsExactly("Y", "X");
        assertThat(ranked.get(1).aboveNextLowerForCertain()).isFalse();
    }
}
