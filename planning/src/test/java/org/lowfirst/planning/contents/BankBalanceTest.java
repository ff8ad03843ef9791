package org.lowfirst.planning.contents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.contents.BankBalance.Balance;
import org.lowfirst.planning.contents.BankBalance.SupplyDrop;

/**
 * The bank's drop against what was billed. Three 50 L supplies at 17 C, gauges 0 to 315 bar of class 1.6 (limit 5.04 bar); litres
 * at 15 C and 1.013 bar. The drop of 1,845 L and the allowance of about 265 L for each supply: CoolProp 8.0.0.
 */
class BankBalanceTest {

    private final BankBalance balance = new BankBalance(Given.ASSUMED);

    private static SupplyDrop drop(String name, double before, double after) {
        MeteredCylinder supply = Given.cylinder(name, 50);
        Gauge gauge = Given.gauge("gauge of " + name);
        return new SupplyDrop(
                supply,
                Given.measured(0, supply, gauge, before, Given.measured(17)),
                Given.measured(0.4, supply, gauge, after, Given.measured(17)));
    }

    private static ContentsEstimate litres(double litres, double deviation) {
        double perLitre = Given.OXYGEN
                .gas()
                .amountOf(Volume.ofLitres(1), ReferenceCondition.ISO_15C_1ATM)
                .moles();
        return new ContentsEstimate(litres * perLitre, deviation * perLitre);
    }

    private Balance monthEnd(double billed) {
        return balance.compare(
                List.of(drop("A", 70, 63), drop("B", 128, 113), drop("C", 194, 181)), litres(billed, 20));
    }

    @Test
    void aHundredAndEightyEightLitresMoreThanBilledIsInsideGaugeUncertainty() {
        Balance found = monthEnd(1657);
        assertThat(Given.litres15(found.left_mol())).isCloseTo(1845, within(1.0));
        assertThat(Given.litres15(found.difference_mol())).isCloseTo(188, within(1.0));
        assertThat(found.code()).isEqualTo(VerdictCode.INSIDE_GAUGE_UNCERTAINTY);
        assertThat(found.possible()).isEmpty();
        assertThat(found.supplies())
                .allSatisfy(s -> assertThat(Given.litres15(s.limit_mol())).isCloseTo(265, within(8.0)));
        double mean = found.supplies().stream()
                .mapToDouble(s -> Given.litres15(s.limit_mol()))
                .average()
                .orElseThrow();
        assertThat(mean).isCloseTo(266, within(1.0));
        assertThat(found.chanceOfNoise()).isBetween(0.1, 0.4);
    }

    @Test
    void halfTheGasUnbilledIsNot() {
        Balance found = monthEnd(900);
        assertThat(found.code()).isEqualTo(VerdictCode.LIKELY_WRONG_VALVE_OR_UNRECORDED_FILL);
        assertThat(found.possible()).startsWith(Cause.UNRECORDED_FILL);
    }

    @Test
    void moreBilledThanLeftPointsAtAnotherSource() {
        Balance found = monthEnd(2800);
        assertThat(found.difference_mol()).isNegative();
        assertThat(found.possible()).startsWith(Cause.OTHER_SOURCE);
    }

    @Test
    void inBetweenIsToBeWatched() {
        assertThat(monthEnd(1350).code()).isEqualTo(VerdictCode.WATCH);
    }
}
