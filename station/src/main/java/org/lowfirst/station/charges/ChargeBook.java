package org.lowfirst.station.charges;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * All charges of a bench, as a value: booking makes another book. Months are closed in order; what comes late is booked in the
 * first open month, with its own day shown.
 *
 * @param lines in the order booked
 * @param closes in order of month
 */
public record ChargeBook(Currency currency, List<ChargeLine> lines, List<MonthClose> closes) {

    public ChargeBook {
        lines = List.copyOf(lines);
        closes = List.copyOf(closes);
    }

    public static ChargeBook empty(Currency currency) {
        return new ChargeBook(currency, List.of(), List.of());
    }

    /** Charges a fill for the first time. */
    public Booking charge(ChargedFill fill, Tariff tariff) {
        OpenBook open = new OpenBook(this);
        return booking(open, open.charge(fill, tariff));
    }

    /**
     * Takes back what stands for a fill and charges it as it should have been: two lines, or one when nothing stands any more.
     */
    public Booking correct(ChargedFill corrected, Tariff tariff, String reason) {
        OpenBook open = new OpenBook(this);
        return booking(open, open.correct(corrected, tariff, reason));
    }

    /** Takes back what stands for a fill: one line. */
    public Booking reverse(String fill, String reason) {
        OpenBook open = new OpenBook(this);
        return booking(open, open.reverse(fill, reason));
    }

    private static Booking booking(OpenBook open, OpenBook.Written written) {
        Booking.NotBooked refused = written.refused();
        return refused == null ? new Booking.Booked(open.toBook(), written.added()) : refused;
    }

    /** The line that counts for a fill now; none when it was never charged or taken back. */
    public Optional<ChargeLine> findStanding(String fill) {
        return findLast(fill).filter(line -> line.kind() != ChargeLine.Kind.REVERSAL);
    }

    private Optional<ChargeLine> findLast(String fill) {
        return lines.stream().filter(line -> line.fill().fill().equals(fill)).reduce((earlier, later) -> later);
    }

    public Statement statement(String person, YearMonth month) {
        return new Statement(
                person,
                month,
                currency,
                lines.stream()
                        .filter(line -> line.month().equals(month)
                                && line.fill().person().equals(person))
                        .toList());
    }

    /** Statements of everybody with a line in the month, in order of name. */
    public List<Statement> listStatements(YearMonth month) {
        TreeSet<String> people = new TreeSet<>();
        lines.stream()
                .filter(line -> line.month().equals(month))
                .forEach(line -> people.add(line.fill().person()));
        return people.stream().map(person -> statement(person, month)).toList();
    }

    /** Exact sum of all lines of a month. */
    public Money total(YearMonth month) {
        return Money.sum(
                lines.stream()
                        .filter(line -> line.month().equals(month))
                        .map(ChargeLine::amount)
                        .toList(),
                currency);
    }

    /**
     * Closes a month.
     *
     * @param today day of closing, after the month's last day
     */
    public Booking close(YearMonth month, LocalDate today, String by) {
        OpenBook open = new OpenBook(this);
        return booking(open, open.close(month, today, by));
    }

    public boolean isClosed(YearMonth month) {
        return closes.stream()
                .map(MonthClose::month)
                .max(Comparator.naturalOrder())
                .filter(last -> !month.isAfter(last))
                .isPresent();
    }
}
