package org.lowfirst.app.table;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.words.Wording;
import org.lowfirst.station.Bench;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command;
import org.lowfirst.station.Material;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.VolumeBasis;
import org.lowfirst.station.WaterVolume;

/**
 * Understands the rows of a table of bottles: a row with a known id changes that bottle if anything differs, any other row
 * registers one.
 */
public final class JudgingBottles {

    private final Bench bench;
    private final Instant now;
    private final Wording wording;

    /** @param now when gauges are taken to have been read */
    public JudgingBottles(Bench bench, Instant now, Locale locale) {
        this.bench = bench;
        this.now = now;
        this.wording = Wording.of(JudgingBottles.class, locale);
    }

    /** @param newId id of the bottle if the row names none */
    public JudgedRow judge(Pasted.Row row, BottleId newId) {
        CellReader reader = new CellReader(row, bench.settings().units(), wording);
        BottleId id = id(reader, newId);
        BottleDetails details = details(reader);
        StatedPressure reads = reader.pressure(BottleColumn.READING);
        boolean retired = reader.yes(BottleColumn.RETIRED).orElseGet(() -> {
            reader.fault(BottleColumn.RETIRED, "cell.retired");
            return false;
        });
        Map<BottleColumn, String> faults = reader.faults();
        return details == null || id == null || !faults.isEmpty()
                ? new JudgedRow(row, faults, List.of())
                : new JudgedRow(row, faults, asked(id, details, reads, retired));
    }

    private static @Nullable BottleId id(CellReader reader, BottleId newId) {
        String typed = reader.text(BottleColumn.ID);
        if (typed.isEmpty()) {
            return newId;
        }
        try {
            return new BottleId(typed);
        } catch (IllegalArgumentException impossible) {
            reader.fault(BottleColumn.ID, "cell.id");
            return null;
        }
    }

    private static @Nullable BottleDetails details(CellReader reader) {
        String name = reader.text(BottleColumn.NAME);
        if (name.isEmpty()) {
            reader.fault(BottleColumn.NAME, "cell.name");
        }
        StatedVolume volume = reader.volume(BottleColumn.VOLUME);
        if (reader.text(BottleColumn.VOLUME).isEmpty()) {
            reader.fault(BottleColumn.VOLUME, "cell.volume");
        }
        StatedPressure marked = reader.pressure(BottleColumn.MARKED);
        if (reader.text(BottleColumn.MARKED).isEmpty()) {
            reader.fault(BottleColumn.MARKED, "cell.marked");
        }
        VolumeBasis basis =
                reader.choice(BottleColumn.KNOWN_BY, VolumeBasis.class, VolumeBasis.STAMPED, "cell.known-by");
        Material material = reader.choice(BottleColumn.MATERIAL, Material.class, null, "cell.material");
        StatedPressure usual = reader.pressure(BottleColumn.USUAL);
        if (volume == null || marked == null || basis == null) {
            return null;
        }
        String source = reader.text(BottleColumn.SOURCE);
        return new BottleDetails(
                name,
                reader.text(BottleColumn.OWNER),
                new WaterVolume(volume, basis, source.isEmpty() ? null : source),
                marked,
                material,
                usual);
    }

    private List<Command> asked(BottleId id, BottleDetails details, @Nullable StatedPressure reads, boolean retired) {
        List<Command> asked = new ArrayList<>();
        Bottle known = bench.findBottle(id).orElse(null);
        Reading reading = reads == null ? null : reading(reads);
        if (known == null) {
            asked.add(new Command.RegisterBottle(id, details, reading));
        } else {
            if (!known.details().equals(details)) {
                asked.add(new Command.AmendBottle(id, details));
            }
            if (reading != null) {
                asked.add(new Command.TakeReading(id, reading));
            }
        }
        if (retired && (known == null || known.inUse())) {
            asked.add(new Command.RetireBottle(id, wording.text("retired.reason", Map.of())));
        }
        return asked;
    }

    private Reading reading(StatedPressure pressure) {
        return new Reading(pressure, now, bench.settings().surroundings().usualTemperature(), true, null);
    }
}
