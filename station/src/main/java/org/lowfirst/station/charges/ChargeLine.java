package org.lowfirst.station.charges;

import java.math.BigDecimal;
import java.time.YearMonth;
import org.jspecify.annotations.Nullable;

/**
 * One line of the charge book. Lines are never changed; a correction adds two.
 *
 * @param id unique in the book
 * @param month month it is booked in; later than the fill's when that month was closed
 * @param fill the fill as charged by this line; of a reversal, as charged by the line reversed
 * @param amount below zero for a reversal
 * @param corrects id of the line it takes back or replaces, null for a first charge
 * @param reason why it was corrected, empty for a first charge
 */
public record ChargeLine(
        String id,
        Kind kind,
        YearMonth month,
        ChargedFill fill,
        Money amount,
        @Nullable String corrects,
        String reason) {

    /** What a line is. */
    public enum Kind {
        FILL,
        REVERSAL,
        CORRECTION
    }

    /** Gas of this line, below zero for a reversal. */
    public BigDecimal quantity() {
        return kind == Kind.REVERSAL ? fill.quantity().negate() : fill.quantity();
    }

    /** It was booked after its own month was closed. */
    public boolean late() {
        return !YearMonth.from(fill.day()).equals(month);
    }
}
