package org.lowfirst.station.charges;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** A charge book being written, so that a long one is not copied at every line. Mutable, not thread-safe. */
public final class OpenBook {

    private final Currency currency;
    private final List<ChargeLine> lines;
    private final List<MonthClose> closes;
    private final Map<String, ChargeLine> latest = new HashMap<>();
    private final Map<String, Integer> counts = new HashMap<>();
    private @Nullable YearMonth closed;

    /**
     * What came of writing.
     *
     * @param refused why nothing was written; null when something was
     * @param added lines added; none for a close
     */
    public record Written(Booking.@Nullable NotBooked refused, List<ChargeLine> added) {

        public Written {
            added = List.copyOf(added);
        }

        private static Written not(Booking.Problem problem, String subject) {
            return new Written(new Booking.NotBooked(problem, subject), List.of());
        }
    }

    /** @param book the book to go on with */
    public OpenBook(ChargeBook book) {
        this.currency = book.currency();
        this.lines = new ArrayList<>(book.lines());
        this.closes = new ArrayList<>(book.closes());
        lines.forEach(this::note);
        closes.forEach(close -> closed = later(closed, close.month()));
    }

    public ChargeBook toBook() {
        return new ChargeBook(currency, lines, closes);
    }

    /** See {@link ChargeBook#charge}. */
    public Written charge(ChargedFill fill, Tariff tariff) {
        if (!tariff.currency().equals(currency)) {
            return Written.not(Booking.Problem.OTHER_CURRENCY, fill.fill());
        }
        if (latest.containsKey(fill.fill())) {
            return Written.not(Booking.Problem.ALREADY_CHARGED, fill.fill());
        }
        return add(List.of(line(ChargeLine.Kind.FILL, fill, tariff, null, "", 1)));
    }

    /** See {@link ChargeBook#correct}. */
    public Written correct(ChargedFill corrected, Tariff tariff, String reason) {
        if (!tariff.currency().equals(currency)) {
            return Written.not(Booking.Problem.OTHER_CURRENCY, corrected.fill());
        }
        ChargeLine last = latest.get(corrected.fill());
        if (last == null) {
            return Written.not(Booking.Problem.NEVER_CHARGED, corrected.fill());
        }
        if (reason.isBlank()) {
            return Written.not(Booking.Problem.REASON_EMPTY, corrected.fill());
        }
        List<ChargeLine> added = new ArrayList<>();
        int number = count(corrected.fill()) + 1;
        if (last.kind() != ChargeLine.Kind.REVERSAL) {
            added.add(reversal(last, reason, number++));
        }
        added.add(line(ChargeLine.Kind.CORRECTION, corrected, tariff, last.id(), reason, number));
        return add(added);
    }

    /** See {@link ChargeBook#reverse}. */
    public Written reverse(String fill, String reason) {
        ChargeLine standing = findStanding(fill).orElse(null);
        if (standing == null) {
            return Written.not(Booking.Problem.NEVER_CHARGED, fill);
        }
        if (reason.isBlank()) {
            return Written.not(Booking.Problem.REASON_EMPTY, fill);
        }
        return add(List.of(reversal(standing, reason, count(fill) + 1)));
    }

    /** See {@link ChargeBook#close}. */
    public Written close(YearMonth month, LocalDate today, String by) {
        if (isClosed(month)) {
            return Written.not(Booking.Problem.MONTH_ALREADY_CLOSED, month.toString());
        }
        if (!today.isAfter(month.atEndOfMonth())) {
            return Written.not(Booking.Problem.MONTH_NOT_OVER, month.toString());
        }
        boolean earlierOpen = lines.stream().anyMatch(line -> line.month().isBefore(month) && !isClosed(line.month()));
        if (earlierOpen) {
            return Written.not(Booking.Problem.EARLIER_MONTH_OPEN, month.toString());
        }
        closes.add(new MonthClose(month, today, by, currency, statements(month)));
        closed = later(closed, month);
        return new Written(null, List.of());
    }

    /** The latest line of a fill, reversals included. */
    public Optional<ChargeLine> findLatest(String fill) {
        return Optional.ofNullable(latest.get(fill));
    }

    /** See {@link ChargeBook#findStanding}. */
    public Optional<ChargeLine> findStanding(String fill) {
        return findLatest(fill).filter(line -> line.kind() != ChargeLine.Kind.REVERSAL);
    }

    public boolean isClosed(YearMonth month) {
        return closed != null && !month.isAfter(closed);
    }

    /** Lines so far, in the order booked. */
    public List<ChargeLine> lines() {
        return List.copyOf(lines);
    }

    private List<Statement> statements(YearMonth month) {
        TreeMap<String, List<ChargeLine>> people = new TreeMap<>();
        for (ChargeLine line : lines) {
            if (line.month().equals(month)) {
                people.computeIfAbsent(line.fill().person(), person -> new ArrayList<>())
                        .add(line);
            }
        }
        return people.entrySet().stream()
                .map(one -> new Statement(one.getKey(), month, currency, one.getValue()))
                .toList();
    }

    private Written add(List<ChargeLine> added) {
        lines.addAll(added);
        added.forEach(this::note);
        return new Written(null, added);
    }

    private void note(ChargeLine line) {
        latest.put(line.fill().fill(), line);
        counts.merge(line.fill().fill(), 1, Integer::sum);
    }

    private int count(String fill) {
        return counts.getOrDefault(fill, 0);
    }

    private static YearMonth later(@Nullable YearMonth one, YearMonth other) {
        return one == null || other.isAfter(one) ? other : one;
    }

    /** The month something of that month is booked in. */
    private YearMonth bookingMonth(YearMonth own) {
        return closed != null && isClosed(own) ? closed.plusMonths(1) : own;
    }

    private ChargeLine reversal(ChargeLine standing, String reason, int number) {
        return new ChargeLine(
                standing.fill().fill() + "." + number,
                ChargeLine.Kind.REVERSAL,
                bookingMonth(standing.month()),
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
                fill.fill() + "." + number,
                kind,
                bookingMonth(YearMonth.from(fill.day())),
                printed,
                charge.amount(),
                corrects,
                reason);
    }
}
