package org.lowfirst.app.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;
import org.lowfirst.app.journal.BenchRow;
import org.lowfirst.app.journal.FactLine;
import org.lowfirst.app.journal.FactLines;
import org.lowfirst.app.journal.Head;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.NewEntry;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.Origin;

/** Loads the demo bench, an invented one; only when asked. Its weeks of history are moved so that they end yesterday. */
public final class LoadingTheDemoBench {

    static final BenchId DEMO = new BenchId("demo");

    /** The day after the last day in the file. */
    static final LocalDate DAY_AFTER = LocalDate.of(2026, 7, 1);

    private static final String FILE = "demo.jsonl";

    private final Recorder recorder;

    LoadingTheDemoBench(Recorder recorder) {
        this.recorder = recorder;
    }

    /**
     * The demo bench; loaded now unless it is there already.
     *
     * @throws org.lowfirst.app.journal.JournalUnavailable when the database fails; then nothing was loaded
     */
    public BenchId load() {
        Journal journal = recorder.journal();
        if (journal.head(DEMO).seq() > 0) {
            return DEMO;
        }
        Instant now = recorder.clock().instant();
        LocalDate today = LocalDate.ofInstant(now, ZoneOffset.UTC);
        Duration shift = Duration.ofDays(ChronoUnit.DAYS.between(DAY_AFTER, today));
        List<NewEntry> entries = lines(shift).stream()
                .map(line -> new NewEntry(
                        new Origin(new EntryKey("demo"), line.effectiveAt(), line.effectiveAt(), line.author()),
                        line.fact(),
                        line.place()))
                .toList();
        journal.append(new BenchRow(DEMO, true), Head.NONE, entries);
        return DEMO;
    }

    private static List<FactLine> lines(Duration shift) {
        try (InputStream in = LoadingTheDemoBench.class.getResourceAsStream(FILE)) {
            return FactLines.read(FILE, Objects.requireNonNull(in, FILE), shift);
        } catch (IOException e) {
            throw new UncheckedIOException("The resource " + FILE + " could not be read.", e);
        }
    }
}
