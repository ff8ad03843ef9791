package org.lowfirst.station.charges;

import java.time.LocalDate;

/** What the supplier costs. Deposits are not a cost: they come back. */
public sealed interface SupplierCost {

    LocalDate day();

    Money amount();

    /** The gas of one full supply. */
    record Content(LocalDate day, String serial, Money amount) implements SupplierCost {}

    record Delivery(LocalDate day, Money amount) implements SupplierCost {}

    /** Rent as invoiced, on the day of the invoice. */
    record Rent(LocalDate day, Money amount) implements SupplierCost {}

    record DepositPaid(LocalDate day, String serial, Money amount) implements SupplierCost {}

    record DepositReturned(LocalDate day, String serial, Money amount) implements SupplierCost {}
}
