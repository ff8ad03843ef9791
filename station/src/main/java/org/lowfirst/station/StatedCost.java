package org.lowfirst.station;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.charges.SupplierCost;

/**
 * Something paid to the supplier, or got back, as typed.
 *
 * @param day day it counts from
 * @param serial serial number of the supply it is for; null when it is for none in particular
 * @param amount below zero when the supplier gave it back
 * @param note number of the bill, or whatever tells it apart; may be empty
 */
public record StatedCost(
        CostKind kind, LocalDate day, @Nullable String serial, StatedMoney amount, String note) {

    /** As a cost; empty when its amount cannot be paid. */
    public Optional<SupplierCost> findCost() {
        String of = serial == null ? "" : serial;
        return amount.findMoney().map(money -> switch (kind) {
            case CONTENT -> new SupplierCost.Content(day, of, money);
            case DELIVERY -> new SupplierCost.Delivery(day, money);
            case RENT -> new SupplierCost.Rent(day, money);
            case DEPOSIT_PAID -> new SupplierCost.DepositPaid(day, of, money);
            case DEPOSIT_RETURNED -> new SupplierCost.DepositReturned(day, of, money);
        });
    }
}
