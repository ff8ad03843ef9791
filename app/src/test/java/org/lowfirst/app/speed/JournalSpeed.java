package org.lowfirst.app.speed;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lowfirst.app.bench.Benches;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.bench.Submission;
import org.lowfirst.app.journal.Appending;
import org.lowfirst.app.journal.Head;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.NewEntry;
import org.lowfirst.app.journal.Opening;
import org.lowfirst.app.journal.StoredEntry;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command.TakeReading;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.Fact;
import org.lowfirst.station.FillId;
import org.lowfirst.station.Origin;
import org.lowfirst.station.Reading;
import org.lowfirst.station.RuleSet;
import org.lowfirst.station.Settings;
import org.lowfirst.station.Stage;
import org.lowfirst.station.StatedAbsolutePressure;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.SupplyDetails;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.Surroundings;
import org.lowfirst.station.Units;
import org.lowfirst.station.WaterVolume;

/**
 * Measures how fast entries are recorded durably and how long a long journal takes to open, beside what the disk itself takes
 * for one forced write. Run by bin/journal-speed.
 */
public final class JournalSpeed {

    private static final BenchId BENCH = new BenchId("bench");
    private static final SupplyId A = new SupplyId("a");
    private static final SupplyId B = new SupplyId("b");
    private static final BottleId BOTTLE = new BottleId("m-03");
    private static final Instant START = Instant.parse("2020-01-01T08:00:00Z");
    private static final int DURABLE = 500;
    private static final int BATCH = 5_000;

    private final PrintStream out;

    private JournalSpeed(PrintStream out) {
        this.out = out;
    }

    /** Arguments: directory to work in, number of entries. */
    public static void main(String[] arguments) throws IOException {
        PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8);
        new JournalSpeed(out).run(Path.of(arguments[0]), Long.parseLong(arguments[1]));
    }

    private void run(Path directory, long entries) throws IOException {
        Path database = directory.resolve("speed.db");
        out.printf(Locale.ROOT, "forced write of 4 kB: %.2f ms%n", forcedWrite_ms(directory.resolve("forced")));
        try (Benches benches = benches(database)) {
            long known = benches.journal().head(BENCH).seq();
            long made = known > 0 ? known : grow(benches.journal(), entries);
            out.printf(Locale.ROOT, "journal of %d entries: %.0f MB%n", made, Files.size(database) / 1e6);
        }
        for (int i = 0; i < 3; i++) {
            open(database);
        }
    }

    private static double forcedWrite_ms(Path file) throws IOException {
        int times = 200;
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            long start = System.nanoTime();
            for (int i = 0; i < times; i++) {
                channel.write(ByteBuffer.allocate(4096));
                channel.force(false);
            }
            return (System.nanoTime() - start) / 1e6 / times;
        }
    }

    private void open(Path database) {
        long start = System.nanoTime();
        long cpu = cpu();
        try (Benches benches = benches(database)) {
            int supplies = benches.keepingTheBank().bank(BENCH).supplies().size();
            out.printf(
                    Locale.ROOT,
                    "open and fold: %.2f s (%.2f s of processor time), %d supplies%n",
                    (System.nanoTime() - start) / 1e9,
                    (cpu() - cpu) / 1e9,
                    supplies);
            durable(benches);
        }
    }

    private void durable(Benches benches) {
        long start = System.nanoTime();
        for (int i = 0; i < DURABLE; i++) {
            Instant now = Clock.systemUTC().instant();
            Recording recording = benches.takingReadings()
                    .take(
                            BENCH,
                            new TakeReading(A, reads("150", now)),
                            Submission.now(new EntryKey("durable-" + start + "-" + i), "Ida"));
            if (!(recording instanceof Recording.Recorded)) {
                throw new IllegalStateException(recording.toString());
            }
        }
        out.printf(Locale.ROOT, "durable entries: %.0f a second%n", DURABLE / ((System.nanoTime() - start) / 1e9));
    }

    private static long grow(Journal journal, long entries) {
        Head head = append(journal, Head.NONE, "set-up", setUp());
        long fill = 0;
        while (head.seq() < entries) {
            List<Fact> facts = new ArrayList<>();
            while (facts.size() < BATCH) {
                fill++;
                facts.addAll(fill(fill));
            }
            head = append(journal, head, "fills-" + fill, facts);
        }
        return head.seq();
    }

    private static Head append(Journal journal, Head head, String key, List<Fact> facts) {
        List<NewEntry> entries = new ArrayList<>();
        for (Fact fact : facts) {
            Instant at = START.plusSeconds(head.seq() + entries.size());
            entries.add(NewEntry.of(new Origin(new EntryKey(key), at, at, "Ida"), fact));
        }
        if (!(journal.append(BENCH, head, entries) instanceof Appending.Appended appended)) {
            throw new IllegalStateException("nothing was appended");
        }
        StoredEntry last = appended.entries().get(appended.entries().size() - 1);
        return new Head(last.entry().seq(), last.hash());
    }

    private static List<Fact> setUp() {
        StatedPressure full = StatedPressure.of("200", PressureUnit.BAR);
        WaterVolume fifty = WaterVolume.stamped(StatedVolume.of("50", VolumeUnit.LITRE));
        WaterVolume five = WaterVolume.stamped(StatedVolume.of("5", VolumeUnit.LITRE));
        Settings settings = new Settings(
                "Bench",
                Units.METRIC,
                RuleSet.EU,
                new Surroundings(
                        StatedTemperature.of("20", TemperatureUnit.CELSIUS),
                        StatedAbsolutePressure.STANDARD,
                        StatedVolume.of("0.05", VolumeUnit.LITRE)),
                full,
                List.of("Ida"));
        return List.of(
                new Fact.BenchOpened(settings),
                new Fact.SupplyConnected(A, new SupplyDetails("A", null, fifty, full), reads("150", START)),
                new Fact.SupplyConnected(B, new SupplyDetails("B", null, fifty, full), reads("190", START)),
                new Fact.BottleRegistered(BOTTLE, new BottleDetails("M-03", "Ida", five, full, null, null), null));
    }

    /** A guided fill of two stages; every tenth time the supplies are read as well. */
    private static List<Fact> fill(long number) {
        FillId fill = new FillId("fill-" + number);
        Instant at = START.plusSeconds(4 * number);
        String bottle = Long.toString(30 + number % 40);
        boolean read = number % 10 == 0;
        return List.of(
                new Fact.FillStarted(fill, BOTTLE, StatedPressure.of("180", PressureUnit.BAR), reads(bottle, at)),
                new Fact.StageRecorded(fill, new Stage(A, reads("140", at), null, read ? reads("150", at) : null)),
                new Fact.StageRecorded(fill, new Stage(B, reads("180", at), null, read ? reads("190", at) : null)),
                new Fact.FillFinished(fill, reads("180", at)));
    }

    private static Reading reads(String bar, Instant at) {
        return new Reading(
                StatedPressure.of(bar, PressureUnit.BAR),
                at,
                StatedTemperature.of("20", TemperatureUnit.CELSIUS),
                false,
                null);
    }

    private static Benches benches(Path database) {
        if (!(Journal.open(database) instanceof Opening.Opened opened)) {
            throw new IllegalStateException("The database does not open.");
        }
        return new Benches(opened.journal(), Clock.systemUTC(), Oxygen.schmidtWagner(), Locale.ENGLISH);
    }

    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
