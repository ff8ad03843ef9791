package org.lowfirst.app.crash;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.lowfirst.app.journal.Appending;
import org.lowfirst.app.journal.Head;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.NewEntry;
import org.lowfirst.app.journal.Opening;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.Fact;
import org.lowfirst.station.Origin;
import org.lowfirst.station.Reading;
import org.lowfirst.station.RuleSet;
import org.lowfirst.station.Settings;
import org.lowfirst.station.StatedAbsolutePressure;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.SupplyDetails;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.Surroundings;
import org.lowfirst.station.Units;
import org.lowfirst.station.WaterVolume;

/** The bench whose programs are killed. */
final class CrashWorld {

    static final BenchId BENCH = new BenchId("bench");
    static final SupplyId A = new SupplyId("a");
    static final SupplyId B = new SupplyId("b");
    static final BottleId BOTTLE = new BottleId("m-03");
    static final Instant OPENED = Instant.parse("2026-06-14T10:00:00Z");

    private CrashWorld() {}

    static Journal open(Path database) {
        if (Journal.open(database) instanceof Opening.Opened opened) {
            return opened.journal();
        }
        throw new AssertionError("the database does not open after a kill");
    }

    /** Makes the database with a bank and a bottle; returns how many entries that takes. */
    static long make(Path database) {
        StatedPressure full = StatedPressure.of("200", PressureUnit.BAR);
        StatedTemperature warm = StatedTemperature.of("20", TemperatureUnit.CELSIUS);
        Settings settings = new Settings(
                "Bench",
                Units.METRIC,
                RuleSet.EU,
                new Surroundings(warm, StatedAbsolutePressure.STANDARD, StatedVolume.of("0", VolumeUnit.LITRE)),
                full,
                List.of("Ida"));
        Reading reading = new Reading(StatedPressure.of("190", PressureUnit.BAR), OPENED, warm, false, null);
        WaterVolume fifty = WaterVolume.stamped(StatedVolume.of("50", VolumeUnit.LITRE));
        WaterVolume five = WaterVolume.stamped(StatedVolume.of("5", VolumeUnit.LITRE));
        List<Fact> facts = List.of(
                new Fact.BenchOpened(settings),
                new Fact.SupplyConnected(A, new SupplyDetails("A", null, fifty, full), reading),
                new Fact.SupplyConnected(B, new SupplyDetails("B", null, fifty, full), reading),
                new Fact.BottleRegistered(BOTTLE, new BottleDetails("M-03", "Ida", five, full, null, null), null));
        Origin origin = new Origin(new EntryKey("set-up"), OPENED, OPENED, "Ida");
        try (Journal journal = open(database)) {
            List<NewEntry> entries =
                    facts.stream().map(fact -> NewEntry.of(origin, fact)).toList();
            if (!(journal.append(BENCH, Head.NONE, entries) instanceof Appending.Appended)) {
                throw new AssertionError("the bench was not opened");
            }
        }
        return facts.size();
    }
}
