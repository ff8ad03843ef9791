package org.lowfirst.app.speed;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.lowfirst.app.bench.Benches;
import org.lowfirst.app.honest.ReadingHistory;
import org.lowfirst.app.journal.Appending;
import org.lowfirst.app.journal.Head;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.NewEntry;
import org.lowfirst.app.journal.Opening;
import org.lowfirst.app.journal.StoredEntry;
import org.lowfirst.app.money.Books;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.BottleId;
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
 * Measures how long the readings of a bench take to judge after one more entry: three supplies that are exchanged when low,
 * thirty bottles, a fill every other day. Arguments: directory to work in, numbers of entries. Run by bin/history-speed.
 */
public final class HistorySpeed {

    private static final BenchId BENCH = new BenchId("bench");
    private static final int SUPPLIES = 3;
    private static final int BOTTLES = 30;
    private static final int TIMES = 12;

    private final Random chance = new Random(20_260_614);
    private final List<Fact> facts = new ArrayList<>();
    private final SupplyId[] bank = new SupplyId[SUPPLIES];
    private final double[] bar = {70, 120, 190};
    private Instant now = Instant.parse("2020-01-01T08:00:00Z");
    private int connected;

    private HistorySpeed() {}

    public static void main(String[] arguments) {
        PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8);
        for (int i = 1; i < arguments.length; i++) {
            int entries = Integer.parseInt(arguments[i]);
            measure(Path.of(arguments[0]).resolve("history-" + entries + ".db"), entries, out);
        }
    }

    private static void measure(Path database, int entries, PrintStream out) {
        try (Benches benches = benches(database)) {
            HistorySpeed story = new HistorySpeed();
            story.write(entries + TIMES);
            List<Fact> facts = story.facts;
            Head head = append(benches.journal(), Head.NONE, facts.subList(0, entries));
            for (int time = 0; time < TIMES; time++) {
                head = append(benches.journal(), head, facts.subList(entries + time, entries + time + 1));
                benches.keepingTheBank().bank(BENCH);
                long start = System.nanoTime();
                long cpu = cpu();
                ReadingHistory history = benches.judgingReadings().history(BENCH);
                out.printf(
                        Locale.ROOT,
                        "%d entries: %.0f ms (%.0f ms of processor time), %d cylinders, %d refused%n",
                        entries,
                        (System.nanoTime() - start) / 1e6,
                        (cpu() - cpu) / 1e6,
                        history.cylinders().size(),
                        history.refused().size());
                start = System.nanoTime();
                cpu = cpu();
                Books books = benches.keepingAccounts().books(BENCH);
                out.printf(
                        Locale.ROOT,
                        "%d entries: accounts in %.0f ms (%.0f ms of processor time), %d bills%n",
                        entries,
                        (System.nanoTime() - start) / 1e6,
                        (cpu() - cpu) / 1e6,
                        books.bills().size());
            }
        }
    }

    private void write(int entries) {
        StatedPressure full = StatedPressure.of("200", PressureUnit.BAR);
        facts.add(new Fact.BenchOpened(new Settings(
                "Bench",
                Units.METRIC,
                RuleSet.EU,
                new Surroundings(
                        StatedTemperature.of("18", TemperatureUnit.CELSIUS),
                        StatedAbsolutePressure.STANDARD,
                        StatedVolume.of("0.05", VolumeUnit.LITRE)),
                full,
                List.of("Ida"))));
        for (int i = 0; i < SUPPLIES; i++) {
            connect(i);
        }
        for (int i = 0; i < BOTTLES; i++) {
            facts.add(new Fact.BottleRegistered(
                    new BottleId("m-" + i), new BottleDetails("M-" + i, "Ida", litres("5"), full, null, null), null));
        }
        for (int fill = 0; facts.size() < entries; fill++) {
            fill(fill);
        }
    }

    private void connect(int place) {
        connected++;
        bank[place] = new SupplyId("s-" + connected);
        SupplyDetails details =
                new SupplyDetails("S" + connected, null, litres("50"), StatedPressure.of("200", PressureUnit.BAR));
        facts.add(new Fact.SupplyConnected(bank[place], details, reads(bar[place])));
    }

    private void fill(int number) {
        now = now.plus(Duration.ofHours(46));
        for (int i = 0; i < SUPPLIES && number % 4 == 0; i++) {
            facts.add(new Fact.ReadingTaken(bank[i], reads(bar[i])));
        }
        FillId fill = new FillId("fill-" + number);
        double bottle = 30 + chance.nextInt(40);
        facts.add(new Fact.FillStarted(
                fill,
                new BottleId("m-" + chance.nextInt(BOTTLES)),
                StatedPressure.of("150", PressureUnit.BAR),
                reads(bottle)));
        for (int i = 0; i < SUPPLIES; i++) {
            if (bar[i] > bottle + 3) {
                double after = Math.min(150, (50 * bar[i] + 5 * bottle) / 55);
                bar[i] -= (after - bottle) / 10;
                bottle = after;
                now = now.plus(Duration.ofMinutes(5));
                facts.add(new Fact.StageRecorded(fill, new Stage(bank[i], reads(bottle), null, reads(bar[i]))));
            }
        }
        now = now.plus(Duration.ofMinutes(3));
        facts.add(new Fact.FillFinished(fill, reads(bottle)));
        if (bar[SUPPLIES - 1] < 155) {
            facts.add(new Fact.SupplyRemoved(bank[0], reads(bar[0]), "low"));
            System.arraycopy(bank, 1, bank, 0, SUPPLIES - 1);
            System.arraycopy(bar, 1, bar, 0, SUPPLIES - 1);
            bar[SUPPLIES - 1] = 200;
            connect(SUPPLIES - 1);
        }
    }

    private Reading reads(double true_bar) {
        double shown = Math.max(0, true_bar + 0.5 * chance.nextGaussian());
        return new Reading(
                new StatedPressure(BigDecimal.valueOf(shown).setScale(0, RoundingMode.HALF_EVEN), PressureUnit.BAR),
                now,
                StatedTemperature.of("18", TemperatureUnit.CELSIUS),
                false,
                null);
    }

    private static WaterVolume litres(String value) {
        return WaterVolume.stamped(StatedVolume.of(value, VolumeUnit.LITRE));
    }

    private static Head append(Journal journal, Head head, List<Fact> facts) {
        List<NewEntry> entries = new ArrayList<>();
        for (Fact fact : facts) {
            Instant at = at(fact);
            entries.add(NewEntry.of(
                    new Origin(new EntryKey("e-" + head.seq() + "-" + entries.size()), at, at, "Ida"), fact));
        }
        if (!(journal.append(BENCH, head, entries) instanceof Appending.Appended appended)) {
            throw new IllegalStateException("nothing was appended");
        }
        StoredEntry last = appended.entries().get(appended.entries().size() - 1);
        return new Head(last.entry().seq(), last.hash());
    }

    private static Instant at(Fact fact) {
        if (fact instanceof Fact.ReadingTaken f) {
            return f.reading().at();
        } else if (fact instanceof Fact.SupplyConnected f) {
            return f.reading().at();
        } else if (fact instanceof Fact.SupplyRemoved f && f.residual() != null) {
            return f.residual().at();
        } else if (fact instanceof Fact.FillStarted f) {
            return f.before().at();
        } else if (fact instanceof Fact.StageRecorded f) {
            return f.stage().bottleAfter().at();
        } else if (fact instanceof Fact.FillFinished f) {
            return f.after().at();
        }
        return Instant.parse("2020-01-01T07:00:00Z");
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
