package org.lowfirst.station.charges;

import java.time.YearMonth;
import java.util.Currency;
import java.util.List;

/**
 * Income of a month against what the supplier cost in it.
 *
 * @param depositsHeld deposits the supplier holds at the end of the month
 */
public record MonthResult(
        YearMonth month, Money income, Money content, Money delivery, Money rent, Money depositsHeld) {

    public static MonthResult of(YearMonth month, ChargeBook book, List<SupplierCost> costs) {
        Currency currency = book.currency();
        List<SupplierCost> inMonth = costs.stream()
                .filter(cost -> YearMonth.from(cost.day()).equals(month))
                .toList();
        List<SupplierCost> untilEnd = costs.stream()
                .filter(cost -> !cost.day().isAfter(month.atEndOfMonth()))
                .toList();
        return new MonthResult(
                month,
                book.total(month),
                sum(inMonth, SupplierCost.Content.class, currency),
                sum(inMonth, SupplierCost.Delivery.class, currency),
                sum(inMonth, SupplierCost.Rent.class, currency),
                sum(untilEnd, SupplierCost.DepositPaid.class, currency)
                        .minus(sum(untilEnd, SupplierCost.DepositReturned.class, currency)));
    }

    private static Money sum(List<SupplierCost> costs, Class<? extends SupplierCost> kind, Currency currency) {
        return Money.sum(
                costs.stream()
                        .filter(kind::isInstance)
                        .map(SupplierCost::amount)
                        .toList(),
                currency);
    }

    public Money costs() {
        return content.plus(delivery).plus(rent);
    }

    /** Income less costs; below zero for a loss. */
    public Money result() {
        return income.minus(costs());
    }
}
