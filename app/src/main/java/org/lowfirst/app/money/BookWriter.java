package org.lowfirst.app.money;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.Currency;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.Entry;
import org.lowfirst.station.FillId;
import org.lowfirst.station.MoneyFact;
import org.lowfirst.station.charges.ChargeBook;
import org.lowfirst.station.charges.ChargeLine;
import org.lowfirst.station.charges.ChargedFill;
import org.lowfirst.station.charges.Money;
import org.lowfirst.station.charges.OpenBook;
import org.lowfirst.station.charges.Tariff;

/**
 * Writes the charge book, entry by entry in the order of their numbers: what stands for a fill is taken back and charged anew
 * whenever an entry changes it. Used once.
 */
final class BookWriter {

    private final Index index = new Index();
    private final Billings billings;
    private final GasMeter meter;
    private final FillTeller teller;
    private final ZoneId zone;
    private final Currency currency;
    private final Causes causes;
    private final Map<String, Working> workings = new HashMap<>();
    private final Map<FillId, Uncharged> uncharged = new LinkedHashMap<>();
    private final Map<FillId, Long> firstCharged = new HashMap<>();
    private final OpenBook book;

    BookWriter(List<Entry> entries, GasMeter meter, ZoneId zone, Currency currency, Causes causes) {
        this.billings = Billings.of(entries);
        this.meter = meter;
        this.teller = new FillTeller(meter, zone);
        this.zone = zone;
        this.causes = causes;
        this.currency = currency;
        this.book = new OpenBook(ChargeBook.empty(currency));
        entries.forEach(this::take);
    }

    ChargeBook book() {
        return book.toBook();
    }

    Map<String, Working> workings() {
        return workings;
    }

    List<Uncharged> uncharged() {
        return List.copyOf(uncharged.values());
    }

    private void take(Entry entry) {
        for (FillId fill : index.take(entry)) {
            settle(fill, entry);
        }
        if (entry.fact() instanceof MoneyFact.MonthClosed closed) {
            close(closed, LocalDate.ofInstant(entry.origin().recordedAt(), zone));
        }
    }

    /** Makes the book say what the journal says of a fill now. */
    private void settle(FillId fill, Entry cause) {
        if (index.unheardOf(fill)) {
            return;
        }
        FillTold told = foreseen(teller.tell(fill, index.about(fill)), cause.seq());
        index.ended(fill, told.endedAt(), told.day());
        ChargeLine last = book.findLatest(fill.value()).orElse(null);
        ChargeLine standing = last == null || last.kind() == ChargeLine.Kind.REVERSAL ? null : last;
        Uncharged.Why why = told.why(currency, meter);
        if (why != null) {
            if (standing != null) {
                Tariff before = tariffOf(standing);
                keep(book.reverse(fill.value(), causes.of(cause)), fill, before, before, cause);
            }
            uncharged.put(fill, new Uncharged(fill, told.day(), told.bottle(), why, cause.seq()));
            return;
        }
        uncharged.remove(fill);
        Tariff tariff = told.tariff();
        ChargedFill charged = told.charged(tariff, meter);
        if (last == null) {
            keep(book.charge(charged, tariff), fill, tariff, null, cause);
        } else if (standing == null || !same(standing, charged, tariff)) {
            Tariff before = standing == null ? null : tariffOf(standing);
            keep(book.correct(charged, tariff, causes.of(cause)), fill, tariff, before, cause);
        }
    }

    private FillTold foreseen(FillTold told, long seq) {
        LocalDate day = told.day();
        if (day == null) {
            return told;
        }
        long charged = firstCharged.getOrDefault(told.fill(), seq);
        return billings.findForeseen(told.fill(), day, charged, seq)
                .map(told::paidBy)
                .orElse(told);
    }

    private Tariff tariffOf(ChargeLine line) {
        return Objects.requireNonNull(workings.get(line.id())).tariff();
    }

    private static boolean same(ChargeLine standing, ChargedFill charged, Tariff tariff) {
        ChargedFill before = standing.fill();
        Money amount = tariff.charge(charged.quantity(), charged.guest()).amount();
        return before.person().equals(charged.person())
                && before.guest() == charged.guest()
                && before.day().equals(charged.day())
                && before.bottle().equals(charged.bottle())
                && before.quantity().compareTo(charged.quantity()) == 0
                && standing.amount().equals(amount);
    }

    private void keep(OpenBook.Written written, FillId fill, Tariff tariff, @Nullable Tariff before, Entry cause) {
        checked(written);
        for (ChargeLine line : written.added()) {
            boolean reversal = line.kind() == ChargeLine.Kind.REVERSAL;
            boolean first = line.kind() == ChargeLine.Kind.FILL;
            workings.put(
                    line.id(),
                    new Working(
                            reversal && before != null ? before : tariff,
                            first ? index.latestOwn(fill, cause.seq()) : cause.seq()));
        }
        firstCharged.putIfAbsent(fill, cause.seq());
    }

    private static void checked(OpenBook.Written written) {
        if (written.refused() != null) {
            throw new IllegalStateException(
                    "The charge book did not take what was checked before: " + written.refused());
        }
    }

    /** Whatever is open before goes with it; that nobody closes over open lines was checked when it was entered. */
    private void close(MoneyFact.MonthClosed closed, LocalDate day) {
        if (book.isClosed(closed.month())) {
            return;
        }
        YearMonth first = book.lines().stream()
                .map(ChargeLine::month)
                .filter(month -> month.isBefore(closed.month()) && !book.isClosed(month))
                .min(YearMonth::compareTo)
                .orElse(closed.month());
        for (YearMonth month = first; !month.isAfter(closed.month()); month = month.plusMonths(1)) {
            LocalDate after = month.atEndOfMonth().plusDays(1);
            checked(book.close(month, day.isBefore(after) ? after : day, closed.by()));
        }
    }
}
