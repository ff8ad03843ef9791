package org.lowfirst.app.money;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.lowfirst.station.Entry;
import org.lowfirst.station.FillId;
import org.lowfirst.station.MoneyFact;

/**
 * Who pays is said after the fill. Said for the first time, and before the month is closed, it counts from the start, so that
 * nothing need be taken back.
 *
 * @param first the first entry about who pays, by fill
 * @param closes numbers of the entries that closed a month, by month
 */
record Billings(Map<FillId, Entry> first, NavigableMap<YearMonth, Long> closes) {

    static Billings of(List<Entry> entries) {
        Map<FillId, Entry> first = new HashMap<>();
        NavigableMap<YearMonth, Long> closes = new TreeMap<>();
        for (Entry entry : entries) {
            if (entry.fact() instanceof MoneyFact.FillBilled billed) {
                first.putIfAbsent(billed.fill(), entry);
            } else if (entry.fact() instanceof MoneyFact.MonthClosed closed) {
                closes.putIfAbsent(closed.month(), entry.seq());
            }
        }
        return new Billings(first, closes);
    }

    /**
     * Who will be said to pay, if that counts from the start.
     *
     * @param day day of the fill
     * @param charged number of the entry it was first charged with
     * @param seq number of the entry up to which the fill is told
     */
    Optional<FillTold.Payer> findForeseen(FillId fill, LocalDate day, long charged, long seq) {
        Entry said = first.get(fill);
        if (said == null || said.seq() <= seq || !(said.fact() instanceof MoneyFact.FillBilled billed)) {
            return Optional.empty();
        }
        boolean closedBetween = closes.tailMap(YearMonth.from(day), true).values().stream()
                .anyMatch(close -> close > charged && close < said.seq());
        return closedBetween
                ? Optional.empty()
                : Optional.of(new FillTold.Payer(billed.payer().strip(), billed.guest()));
    }
}
