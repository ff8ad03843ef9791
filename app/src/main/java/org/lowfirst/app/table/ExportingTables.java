package org.lowfirst.app.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.NoSuchElementException;
import org.lowfirst.app.bench.Benches;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BenchId;

/** Writes what a bench holds as CSV, UTF-8, the same bytes for the same journal. Thread-safe. */
public final class ExportingTables {

    private final Benches benches;
    private final Locale locale;

    /** @param locale language of the headings */
    public ExportingTables(Benches benches, Locale locale) {
        this.benches = benches;
        this.locale = locale;
    }

    /**
     * One table as CSV (RFC 4180), headings first.
     *
     * @throws NoSuchElementException when there is no such bench
     */
    public String csv(BenchId id, TableKind kind) {
        Bench bench = benches.openingABench()
                .findBench(id)
                .orElseThrow(() -> new NoSuchElementException("There is no bench " + id + "."));
        List<List<String>> rows = new ArrayList<>();
        rows.add(new Headings(locale, bench.settings().units()).of(kind));
        rows.addAll(rows(bench, kind));
        return CsvText.write(rows);
    }

    private List<List<String>> rows(Bench bench, TableKind kind) {
        return switch (kind) {
            case BOTTLES -> new BenchTables(bench).bottles();
            case SUPPLIES -> new BenchTables(bench).supplies();
            case PEOPLE -> new BenchTables(bench).people();
            case READINGS -> history(bench).readings();
            case FILLS -> history(bench).fills();
            case STAGES -> history(bench).stages();
        };
    }

    private HistoryTables history(Bench bench) {
        return new HistoryTables(bench, CountingEntries.of(benches.journal(), bench.id()));
    }
}
