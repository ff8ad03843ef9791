package org.lowfirst.station;

import java.time.LocalDate;
import java.util.Optional;
import org.lowfirst.station.charges.RentLine;

/**
 * What a line of a supplier's bill says, as printed, right or wrong.
 *
 * @param from first day charged
 * @param to last day charged, included
 * @param days days as printed
 */
public record BilledStay(
        String serial, LocalDate from, LocalDate to, int days, StatedMoney perDay, StatedMoney amount) {

    /**
     * As a line to be checked; empty when its days run backwards or its amount cannot be paid.
     *
     * @param reference bill and line
     */
    public Optional<RentLine> findLine(String reference) {
        return RentRules.days(this) == null
                ? amount.findMoney()
                        .map(money -> new RentLine(reference, serial, from, to, days, perDay.value(), money))
                : Optional.empty();
    }
}
