package org.lowfirst.station;

import java.util.Optional;
import org.lowfirst.station.charges.DayCount;
import org.lowfirst.station.charges.RentTerms;

/**
 * The rent agreed, as typed.
 *
 * @param perDay for each cylinder and day; may be finer than it can be paid
 * @param freeDays days at the start of each stay without rent
 */
public record StatedRent(StatedMoney perDay, StatedRounding rounding, DayCount dayCount, int freeDays) {

    /** As terms; empty when they make none. */
    public Optional<RentTerms> findTerms() {
        return RentRules.check(this) == null
                ? Currencies.find(perDay.currency())
                        .map(money -> new RentTerms(money, perDay.value(), rounding.rule(), dayCount, freeDays))
                : Optional.empty();
    }
}
