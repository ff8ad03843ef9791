package org.lowfirst.station;

/** What is paid to the supplier. */
public enum CostKind {
    /** The gas of one full supply. */
    CONTENT,
    DELIVERY,
    /** Rent on a bill that names no serial numbers; other rent is entered line by line. */
    RENT,
    DEPOSIT_PAID,
    DEPOSIT_RETURNED;

    /** Whether it is always for one supply. */
    public boolean ofOneSupply() {
        return this == DEPOSIT_PAID || this == DEPOSIT_RETURNED;
    }
}
