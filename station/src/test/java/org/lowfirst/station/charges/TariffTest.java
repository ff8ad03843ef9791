package org.lowfirst.station.charges;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.Volume;
import org.lowfirst.gas.VolumeUnit;

class TariffTest {

    private static Tariff tariff(String perUnit, String perFill, String minimum, String guests, RoundingRule rounding) {
        return new Tariff(
                Currency.getInstance("CHF"),
                GasUnit.STANDARD_CUBIC_FOOT,
                ReferenceCondition.US_70F_1ATM,
                new Prices(
                        new BigDecimal(perUnit),
                        new BigDecimal(perFill),
                        new BigDecimal(minimum),
                        new BigDecimal(guests)),
                rounding,
                1);
    }

    @ParameterizedTest(name = "{0} cu ft, guest {1}: {2}")
    @CsvSource({
        "0, false, 4.00, true", // nothing went in: the minimum
        "5.0, false, 4.00, true", // 1.50 + 5 x 0.42 = 3.60
        "10.0, false, 5.70, false",
        "10.0, true, 7.13, false", // 5.70 x 1.25 = 7.125
        "5.0, true, 5.00, true" // the surcharge goes on the minimum
    })
    void aFillCostsItsGasAndItsFeeAtLeastTheMinimumAndMoreForGuests(
            String cubicFeet, boolean guest, String amount, boolean minimum) {
        Tariff tariff = tariff("0.42", "1.50", "4.00", "25", RoundingRule.halfUp("0.01"));

        Charge charge = tariff.charge(new BigDecimal(cubicFeet), guest);

        assertThat(charge.amount()).isEqualTo(Money.of(amount, "CHF"));
        assertThat(charge.minimumApplied()).isEqualTo(minimum);
    }

    @Test
    void roundingFollowsItsStepAndMode() {
        Currency chf = Currency.getInstance("CHF");
        assertThat(RoundingRule.halfUp("0.05").round(new BigDecimal("5.72"), chf))
                .isEqualTo(Money.of("5.70", "CHF"));
        assertThat(RoundingRule.halfUp("0.05").round(new BigDecimal("5.725"), chf))
                .isEqualTo(Money.of("5.75", "CHF"));
        RoundingRule even = new RoundingRule(RoundingMode.HALF_EVEN, new BigDecimal("0.01"));
        assertThat(even.round(new BigDecimal("7.125"), chf)).isEqualTo(Money.of("7.12", "CHF"));
        RoundingRule up = new RoundingRule(RoundingMode.UP, new BigDecimal("0.50"));
        assertThat(up.round(new BigDecimal("3.01"), chf)).isEqualTo(Money.of("3.50", "CHF"));
        assertThat(RoundingRule.halfUp("1").round(new BigDecimal("99.5"), Currency.getInstance("JPY")))
                .isEqualTo(Money.of("100", "JPY"));
    }

    @Test
    void theQuantityChargedIsTheQuantityPrinted() {
        Tariff tariff = tariff("1", "0", "0", "0", RoundingRule.halfUp("0.01"));

        assertThat(tariff.quantity(Volume.of(12.349, VolumeUnit.CUBIC_FOOT))).isEqualByComparingTo("12.3");
        Charge charge = tariff.charge(new BigDecimal("12.349"), false);
        assertThat(charge.quantity()).isEqualByComparingTo("12.3");
        assertThat(charge.amount()).isEqualTo(Money.of("12.30", "CHF"));
    }

    @Test
    void stepTheCurrencyCannotPayIsRefusedAtOnce() {
        assertThatThrownBy(() -> tariff("1", "0", "0", "0", RoundingRule.halfUp("0.001")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("0.001 CHF");
    }

    @Test
    void moneyOfTwoCurrenciesIsNotAdded() {
        assertThatThrownBy(() -> Money.of("1", "CHF").plus(Money.of("1", "EUR")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("CHF, EUR");
        assertThat(Money.of("1.5", "EUR")).isEqualTo(Money.of("1.50", "EUR"));
    }
}
