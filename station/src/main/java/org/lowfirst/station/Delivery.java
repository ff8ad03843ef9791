package org.lowfirst.station;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What came on paper with a supply.
 *
 * @param lot lot or certificate number of the gas, when there is one
 * @param rentFrom first day that is rented, when it is rented
 * @param supplier who brought it, when said
 */
public record Delivery(
        @Nullable String lot,
        @Nullable LocalDate rentFrom,
        @Nullable String supplier) {

    /** Nobody said anything. */
    public static final Delivery UNSAID = new Delivery(null, null, null);
}
