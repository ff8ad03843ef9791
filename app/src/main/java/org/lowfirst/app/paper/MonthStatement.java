package org.lowfirst.app.paper;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Currency;
import java.util.List;
import org.lowfirst.station.charges.Money;

/**
 * What one person owes for one month.
 *
 * @param person whose statement it is
 * @param gasUnit symbol of the unit of the quantities, e.g. "L"
 * @param lines in the order booked; their amounts are in {@code currency}
 */
public record MonthStatement(
        Heading heading, String person, YearMonth month, Currency currency, String gasUnit, List<Line> lines)
        implements Paper {

    public MonthStatement {
        lines = List.copyOf(lines);
    }

    /**
     * @param what what is charged, e.g. the bottle; of a correction also why
     * @param quantity gas; below zero in a line that takes another back
     * @param amount below zero in a line that takes another back
     */
    public record Line(LocalDate day, String what, BigDecimal quantity, Money amount) {}

    /** Exact sum of the lines. */
    public Money total() {
        return Money.sum(lines.stream().map(Line::amount).toList(), currency);
    }
}
