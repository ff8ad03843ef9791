package org.lowfirst.station.charges;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Currency;
import java.util.List;

/**
 * A month that is closed: its statements as they were, and nothing more is booked in it.
 *
 * @param statements by person, in order of name
 */
public record MonthClose(
        YearMonth month, LocalDate closedOn, String closedBy, Currency currency, List<Statement> statements) {

    public MonthClose {
        statements = List.copyOf(statements);
    }

    public Money total() {
        return Money.sum(statements.stream().map(Statement::total).toList(), currency);
    }
}
