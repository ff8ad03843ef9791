package org.lowfirst.station.charges;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

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
        if (!tariff.currency().equals(currency)) {
            return new Booking.NotBooked(Booking.Problem.OTHER_CURRENCY, fill.fill());
        }
        if (lines.stream().anyMatch(line -> line.fill().fill().equals(fill.fill()))) {
            return new Booking.NotBooked(Booking.Problem.ALREADY_CHARGED, fill.fill());
        }
        return booked(List.of(line(ChargeLine.Kind.FILL, fill, tariff, null, "", 1)));
    }

    /**
     * Takes back what stands for a fill and charges it as it should have been: two lines, or one when nothing stands any more.
     */
    public Booking correct(ChargedFill corrected, Tariff tariff, String reason) {
        if (!tariff.currency().equals(currency)) {
            return new Booking.NotBooked(Booking.Problem.OTHER_CURRENCY, corrected.fill());
        }
        ChargeLine last = findLast(corrected.fill()).orElse(null);
        if (last == null) {
            return new Booking.NotBooked(Booking.Problem.NEVER_CHARGED, corrected.fill());
        }
        if (reason.isBlank()) {
            return new Booking.NotBooked(Booking.Problem.REASON_EMPTY, corrected.fill());
        }
        List<ChargeLine> added = new ArrayList<>();
        int number = count(corrected.fill()) + 1;
        if (last.kind() != ChargeLine.Kind.REVERSAL) {
            added.add(reversal(last, reason, number++));
        }
        added.add(line(ChargeLine.Kind.CORRECTION, corrected, tariff, last.id(), reason, number));
        return booked(added);
    }

    /** Takes back what stands for a fill: one line. */
    public Booking reverse(String fill, String reason) {
        ChargeLine standing = findStanding(fill).orElse(null);
        if (standing == null) {
            return new Booking.NotBooked(Booking.Problem.NEVER_CHARGED, fill);
        }
        if (reason.isBlank()) {
            return new Booking.NotBooked(Booking.Problem.REASON_EMPTY, fill);
        }
        return booked(List.of(reversal(standing, reason, count(fill) + 1)));
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
        if (isClosed(month)) {
            return new Booking.NotBooked(Booking.Problem.MONTH_ALREADY_CLOSED, month.toString());
        }
        if (!today.isAfter(month.atEndOfMonth())) {
            return new Booking.NotBooked(Booking.Problem.MONTH_NOT_OVER, month.toString());
        }
        boolean earlierOpen = lines.stream().anyMatch(line -> line.month().isBefore(month) && !isClosed(line.month()));
        if (earlierOpen) {
            return new Booking.NotBooked(Booking.Problem.EARLIER_MONTH_OPEN, month.toString());
        }
        List<MonthClose> more = new ArrayList<>(closes);
        more.add(new MonthClose(month, today, by, currency, listStatements(month)));
        return new Booking.Booked(new ChargeBook(currency, lines, more), List.of());
    }

    public boolean isClosed(YearMonth month) {
        return closes.stream()
                .map(MonthClose::month)
                .max(Comparator.naturalOrder())
                .filter(last -> !month.isAfter(last))
                .isPresent();
    }

    /** The month something of that day is booked in. */
    private YearMonth bookingMonth(LocalDate day) {
        YearMonth own = YearMonth.from(day);
        return closes.stream()
                .map(MonthClose::month)
                .max(Comparator.naturalOrder())
                .filter(last -> !own.isAfter(last))
                .map(last -> last.plusMonths(1))
                .orElse(own);
    }

    private Booking booked(List<ChargeLine> added) {
        List<ChargeLine> more = new ArrayList<>(lines);
        more.addAll(added);
        return new Booking.Booked(new ChargeBook(currency, more, closes), added);
    }

    private int count(String fill) {
        return (int)
                lines.stream().filter(line -> line.fill().fill().equals(fill)).count();
    }

    private ChargeLine reversal(ChargeLine standing, String reason, int number) {
        return new ChargeLine(
                standing.fill().fill() + "." + number,
                ChargeLine.Kind.REVERSAL,
                bookingMonth(standing.month().atDay(1)),
                standing.fill(),
                standing.amount().negated(),
                standing.id(),
                reason);
    }

    private ChargeLine line(
            ChargeLine.Kind kind,
            ChargedFill fill,
            Tariff tariff,
            @Nullable String corrects,
            String reason,
            int number) {
        Charge charge = tariff.charge(fill.quantity(), fill.guest());
        ChargedFill printed =
                new ChargedFill(fill.fill(), fill.day(), fill.person(), fill.guest(), fill.bottle(), charge.quantity());
        return new ChargeLine(
                fill.fill() + "." + number, kind, bookingMonth(fill.day()), printed, charge.amount(), corrects, reason);
    }
}
