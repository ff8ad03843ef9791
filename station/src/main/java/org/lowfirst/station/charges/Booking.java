package org.lowfirst.station.charges;

import java.util.List;

/** What came of booking something in the charge book. */
public sealed interface Booking {

    /** @param added lines this booking added; none for a close */
    record Booked(ChargeBook book, List<ChargeLine> added) implements Booking {

        public Booked {
            added = List.copyOf(added);
        }
    }

    /** @param subject the fill or month it is about */
    record NotBooked(Problem problem, String subject) implements Booking {}

    /** Why nothing was booked. */
    enum Problem {
        ALREADY_CHARGED,
        /** Or taken back already. */
        NEVER_CHARGED,
        OTHER_CURRENCY,
        REASON_EMPTY,
        MONTH_ALREADY_CLOSED,
        /** A month is closed after its last day. */
        MONTH_NOT_OVER,
        /** Lines of an earlier month are not closed yet. */
        EARLIER_MONTH_OPEN
    }
}
