package org.lowfirst.station.charges;

import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.Currency;
import java.util.List;

/**
 * What one person owes for one month: every line, and their exact sum.
 *
 * @param lines in the order booked
 */
public record Statement(String person, YearMonth month, Currency currency, List<ChargeLine> lines) {

    public Statement {
        lines = List.copyOf(lines);
        for (ChargeLine line : lines) {
            if (!line.fill().person().equals(person) || !line.month().equals(month)) {
                throw new IllegalArgumentException(
                        "The line " + line.id() + " must belong to " + person + " and " + month + ".");
            }
        }
    }

    public Money total() {
        return Money.sum(lines.stream().map(ChargeLine::amount).toList(), currency);
    }

    /** Gas of all lines, reversals taken off. */
    public BigDecimal quantity() {
        return lines.stream().map(ChargeLine::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
