package org.lowfirst.app.table;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.lowfirst.app.bench.Benches;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.bench.Submission;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.Opening;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.Refused;
import org.lowfirst.station.RuleSet;
import org.lowfirst.station.Settings;
import org.lowfirst.station.StatedAbsolutePressure;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.Surroundings;
import org.lowfirst.station.Units;

/** A metric bench on a database of its own, to which tables are brought. */
final class TableBench implements AutoCloseable {

    static final BenchId BENCH = new BenchId("bench");
    static final Instant TEN = Instant.parse("2026-06-14T10:00:00Z");

    final Benches benches;
    private int keys;

    private TableBench(Benches benches) {
        this.benches = benches;
    }

    static TableBench at(Path file) {
        if (!(Journal.open(file) instanceof Opening.Opened opened)) {
            throw new AssertionError("the database does not open");
        }
        TableBench bench = new TableBench(new Benches(
                opened.journal(), Clock.fixed(TEN, ZoneOffset.UTC), Oxygen.schmidtWagner(), Locale.ENGLISH));
        Surroundings surroundings = new Surroundings(
                StatedTemperature.of("15", TemperatureUnit.CELSIUS),
                StatedAbsolutePressure.of("1.013", PressureUnit.BAR),
                StatedVolume.of("0", VolumeUnit.LITRE));
        bench.benches
                .openingABench()
                .open(
                        BENCH,
                        new Settings(
                                "Larkmoor",
                                Units.METRIC,
                                RuleSet.EU,
                                surroundings,
                                StatedPressure.of("200", PressureUnit.BAR),
                                List.of("Ida")),
                        bench.submission());
        return bench;
    }

    Bench bench() {
        return benches.openingABench().findBench(BENCH).orElseThrow();
    }

    Submission submission() {
        keys++;
        return Submission.now(new EntryKey("key-" + keys), "Ida");
    }

    String csv(TableKind kind) {
        return new ExportingTables(benches, Locale.ENGLISH).csv(BENCH, kind);
    }

    /** The rows of a table as the bench understands them. */
    List<JudgedRow> judged(String text) {
        if (!(new ReadingPastedBottles(Locale.ENGLISH).read(text) instanceof Pasted.Table table)) {
            throw new AssertionError("not read: " + text);
        }
        JudgingBottles judging = new JudgingBottles(bench(), TEN, Locale.ENGLISH);
        return IntStream.range(0, table.rows().size())
                .mapToObj(i -> judging.judge(table.rows().get(i), new BottleId("new-" + keys + "-" + i)))
                .toList();
    }

    List<Optional<Refused>> checked(String text) {
        return benches.enteringManyBottles()
                .check(BENCH, judged(text).stream().map(JudgedRow::asked).toList(), submission());
    }

    Recording entered(String text) {
        return benches.enteringManyBottles()
                .enter(BENCH, judged(text).stream().map(JudgedRow::asked).toList(), submission());
    }

    @Override
    public void close() {
        benches.close();
    }
}
