package org.lowfirst.station.charges;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Currency;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.ReferenceCondition;

class MonthResultTest {

    private static final Currency EUR = Currency.getInstance("EUR");
    private static final YearMonth JUNE = YearMonth.of(2026, 6);

    @Test
    void incomeIsHeldAgainstContentDeliveryAndRentAndDepositsAreNoCost() {
        Tariff tariff = new Tariff(
                EUR,
                GasUnit.STANDARD_LITRE,
                ReferenceCondition.ISO_15C_1ATM,
                new Prices(new BigDecimal("0.02"), BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO),
                RoundingRule.halfUp("0.01"),
                0);
        ChargedFill fill = new ChargedFill("F-1", JUNE.atDay(9), "P. Holm", false, "B-1", new BigDecimal("5000"));
        ChargeBook book = ((Booking.Booked) ChargeBook.empty(EUR).charge(fill, tariff)).book();
        List<SupplierCost> costs = List.of(
                new SupplierCost.DepositPaid(LocalDate.of(2026, 5, 2), "S-1", Money.of("80", "EUR")),
                new SupplierCost.DepositPaid(JUNE.atDay(4), "S-2", Money.of("80", "EUR")),
                new SupplierCost.DepositReturned(JUNE.atDay(4), "S-1", Money.of("80", "EUR")),
                new SupplierCost.Content(JUNE.atDay(4), "S-2", Money.of("41.20", "EUR")),
                new SupplierCost.Delivery(JUNE.atDay(4), Money.of("18.00", "EUR")),
                new SupplierCost.Rent(JUNE.atDay(30), Money.of("31.50", "EUR")),
                new SupplierCost.Rent(LocalDate.of(2026, 7, 31), Money.of("32.55", "EUR")));

        MonthResult june = MonthResult.of(JUNE, book, costs);

        assertThat(june.income()).isEqualTo(Money.of("100.00", "EUR"));
        assertThat(june.costs()).isEqualTo(Money.of("90.70", "EUR"));
        assertThat(june.result()).isEqualTo(Money.of("9.30", "EUR"));
        assertThat(june.depositsHeld()).isEqualTo(Money.of("80.00", "EUR"));
        assertThat(MonthResult.of(YearMonth.of(2026, 7), book, costs).result()).isEqualTo(Money.of("-32.55", "EUR"));
    }
}
