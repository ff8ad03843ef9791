package org.lowfirst.planning.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lowfirst.gas.PressureUnit.PSI;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;

/**
 * The same bottle for ever, the lowest supply exchanged just before a fill that would fail.
 *
 * <p>Source: computed outside this project with the oxygen equation of Schmidt and Wagner (1985) in an open general-purpose
 * property library (CoolProp 8.0.0), 294.26 K, supplies 49.0 L at 2200 psi, bottle 2.9 L from 200 to 2015 psi. Tolerance: half a
 * unit of the last digit given.
 */
final class LongRunReferenceTest {

    private static final Temperature T = new Temperature(294.26);

    @ParameterizedTest
    @CsvSource({"2, 7.600, 1395.9", "3, 12.500, 874.6", "4, 15.000, 603.5", "6, 17.000, 383.0"})
    void moreSuppliesGiveMoreFillsPerSupplyAndSendLessBack(int size, double fills, double sentBack_psi) {
        SupplyKind supply = new SupplyKind("supply", Volume.ofLitres(49.0), GaugePressure.ofPsi(2200), 1, 0);
        AlternativeResult result = Studies.done(new StudyRequest(
                        Site.of(Oxygen.schmidtWagner(), BenchTemperature.constant(T), T),
                        Demand.even(5_000, List.of(Studies.bottle(2.9, 200, 2015, PSI))),
                        Studies.PRICES,
                        List.of(new Alternative("bank", size, supply, ExchangeHabit.oneAtATime())),
                        Extent.of(100, 2, 1)))
                .alternatives()
                .get(0);
        assertThat(Objects.requireNonNull(result.usage().fillsPerSupply()).mean())
                .isEqualTo(fills, within(0.0005));
        assertThat(Objects.requireNonNull(result.sentBack()).meanReading().toPsi())
                .isEqualTo(sentBack_psi, within(0.05));
        assertThat(result.usage().missedPerYear().mean()).isZero();
    }
}
