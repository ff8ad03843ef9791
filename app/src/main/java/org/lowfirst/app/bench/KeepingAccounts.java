package org.lowfirst.app.bench;

import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.lowfirst.app.honest.BalanceReport;
import org.lowfirst.app.honest.JudgingReadings;
import org.lowfirst.app.honest.Outcome;
import org.lowfirst.app.journal.Head;
import org.lowfirst.app.journal.StoredEntry;
import org.lowfirst.app.money.Bookkeeping;
import org.lowfirst.app.money.Books;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Command;
import org.lowfirst.station.MoneyFact;
import org.lowfirst.station.Refused;
import org.lowfirst.station.Rule;

/**
 * Keeps the accounts of a bench: prices, who pays, supplier costs, month closes. Nothing here ever stands in the way of a fill.
 * Thread-safe.
 */
public final class KeepingAccounts {

    private final Recorder recorder;
    private final JudgingReadings judging;
    private final Bookkeeping bookkeeping;
    private final Map<BenchId, Known> known = new ConcurrentHashMap<>();

    private record Known(Head head, LocalDate day, Books books) {}

    KeepingAccounts(Recorder recorder, JudgingReadings judging, GasCount count, Locale locale) {
        this.recorder = recorder;
        this.judging = judging;
        this.bookkeeping =
                new Bookkeeping(new CountedGas(count), recorder.clock().getZone(), locale);
    }

    /**
     * The accounts as the journal leaves them. Worked out once for each head of the journal and each day.
     *
     * @throws java.util.NoSuchElementException when there is no such bench
     */
    public Books books(BenchId bench) {
        BenchState state = recorder.getState(bench);
        Instant now = recorder.clock().instant();
        LocalDate day = LocalDate.ofInstant(now, zone());
        Known before = known.get(bench);
        if (before != null && before.head().equals(state.head()) && before.day().equals(day)) {
            return before.books();
        }
        Head head = state.head();
        Books books = bookkeeping.books(
                head,
                recorder.journal().listFrom(bench, 1).stream()
                        .map(StoredEntry::entry)
                        .filter(entry -> entry.seq() <= head.seq())
                        .toList(),
                state.bench().areas().accounts(),
                now);
        known.put(bench, new Known(head, day, books));
        return books;
    }

    /** Enters prices, costs, terms, bills, or who pays. */
    public Recording enter(BenchId bench, MoneyFact fact, Submission submission) {
        return fact instanceof MoneyFact.MonthClosed closed
                ? close(bench, closed, submission)
                : recorder.record(bench, new Command.Enter(fact), submission);
    }

    /** Months are closed in order; a retry of a close finds its own done. */
    private Recording close(BenchId bench, MoneyFact.MonthClosed closed, Submission submission) {
        YearMonth month = closed.month();
        return recorder.findState(bench).isEmpty()
                ? recorder.record(bench, new Command.Enter(closed), submission)
                : books(bench)
                        .findOpenBefore(month)
                        .<Recording>map(open ->
                                new Recording.NotRecorded(Refused.of(Rule.EARLIER_MONTH_OPEN, month.toString())))
                        .orElseGet(() -> recorder.record(bench, new Command.Enter(closed), submission));
    }

    /**
     * What left the supplies in a month against what entered bottles, by their gauges.
     *
     * @throws java.util.NoSuchElementException when there is no such bench
     */
    public Outcome<BalanceReport> balance(BenchId bench, YearMonth month) {
        return judging.balance(
                bench,
                month.atDay(1).atStartOfDay(zone()).toInstant(),
                month.plusMonths(1).atDay(1).atStartOfDay(zone()).toInstant());
    }

    private ZoneId zone() {
        return recorder.clock().getZone();
    }
}
