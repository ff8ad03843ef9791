package org.lowfirst.app.honest;

import java.time.Instant;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.lowfirst.app.words.Wording;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.FillId;

/** Judges the readings of a bench: contents with their spread, verdicts, what the gauges showed about themselves. Thread-safe. */
public final class JudgingReadings {

    private final BenchSource source;
    private final Wording wording;
    private final Map<BenchId, Known> known = new ConcurrentHashMap<>();

    private record Known(ReadingHistory history, Reconciled reconciled) {}

    public JudgingReadings(BenchSource source, Locale locale) {
        this.source = source;
        this.wording = Wording.of(JudgingReadings.class, locale);
    }

    /**
     * What the readings come to. Worked out once for each head of the journal.
     *
     * @throws java.util.NoSuchElementException when there is no such bench
     */
    public ReadingHistory history(BenchId bench) {
        return known(bench).history();
    }

    /**
     * After a fill: what left its supplies against what entered the bottle.
     *
     * @throws java.util.NoSuchElementException when there is no such bench
     */
    public Outcome<BalanceReport> balance(BenchId bench, FillId fill) {
        return book(bench).ofFill(fill);
    }

    /**
     * What left the supplies against what entered bottles between two moments; supplies count by their last reading before each.
     *
     * @throws java.util.NoSuchElementException when there is no such bench
     */
    public Outcome<BalanceReport> balance(BenchId bench, Instant from, Instant to) {
        return book(bench).between(from, to);
    }

    private BalanceBook book(BenchId bench) {
        return new BalanceBook(
                known(bench).reconciled(), source.getStanding(bench).bench(), source, wording);
    }

    private Known known(BenchId bench) {
        BenchSource.Standing standing = source.getStanding(bench);
        Known before = known.get(bench);
        if (before != null && before.history().head().equals(standing.head())) {
            return before;
        }
        int most = JournalAssumptions.STANDARD.mostEntries();
        Reconciled reconciled =
                Reconciled.of(standing.bench(), source.listLatest(bench, standing.head(), most), source);
        Known now = new Known(new HistoryReport(standing, reconciled, source.gas(), wording).history(), reconciled);
        known.put(bench, now);
        return now;
    }
}
