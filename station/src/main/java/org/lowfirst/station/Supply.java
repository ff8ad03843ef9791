package org.lowfirst.station;

/**
 * One supply cylinder as the journal knows it.
 *
 * @param latest latest gauge reading; draws since then are in the book of the bank, not here
 */
public record Supply(SupplyId id, SupplyDetails details, SupplyStatus status, Reading latest) {

    public boolean connected() {
        return status == SupplyStatus.CONNECTED;
    }

    Supply with(SupplyDetails amended) {
        return new Supply(id, amended, status, latest);
    }

    Supply with(Reading reading) {
        return new Supply(id, details, status, reading);
    }

    Supply removed() {
        return new Supply(id, details, SupplyStatus.REMOVED, latest);
    }
}
