package org.lowfirst.app.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.CylinderId;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Fact;
import org.lowfirst.station.FillId;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Stage;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.Units;

/** What happened at a bench, row by row, oldest first: readings, fills, stages. */
final class HistoryTables {

    private final Bench bench;
    private final Units units;
    private final List<List<String>> readings = new ArrayList<>();
    private final List<List<String>> stages = new ArrayList<>();
    private final Map<FillId, Fill> fills = new LinkedHashMap<>();

    /** @param entries those that count, in the order they count */
    HistoryTables(Bench bench, List<Entry> entries) {
        this.bench = bench;
        this.units = bench.settings().units();
        entries.forEach(this::take);
    }

    List<List<String>> readings() {
        return List.copyOf(readings);
    }

    List<List<String>> stages() {
        return List.copyOf(stages);
    }

    List<List<String>> fills() {
        return fills.values().stream().map(this::row).toList();
    }

    private void take(Entry entry) {
        Fact fact = entry.fact();
        if (fact instanceof Fact.SupplyConnected f) {
            read(entry, f.supply(), f.reading());
        } else if (fact instanceof Fact.SupplyRemoved f) {
            read(entry, f.supply(), f.residual());
        } else if (fact instanceof Fact.BottleRegistered f) {
            read(entry, f.bottle(), f.reading());
        } else if (fact instanceof Fact.ReadingTaken f) {
            read(entry, f.cylinder(), f.reading());
        } else if (fact instanceof Fact.WarmBottleRead f) {
            read(entry, f.bottle(), f.reading());
        } else if (fact instanceof Fact.TwoOpenedTogether f) {
            read(entry, f.first(), f.firstAfter());
            read(entry, f.second(), f.secondAfter());
        } else {
            takeFill(entry);
        }
    }

    private void takeFill(Entry entry) {
        Fact fact = entry.fact();
        if (fact instanceof Fact.FillStarted f) {
            fills.put(f.fill(), new Fill(f.fill(), f.bottle(), f.target(), f.before(), entry));
            read(entry, f.bottle(), f.before());
        } else if (fact instanceof Fact.StageRecorded f) {
            take(entry, f.fill(), f.stage());
        } else if (fact instanceof Fact.FillFinished f) {
            Fill fill = fills.get(f.fill());
            if (fill != null) {
                fill.after = f.after();
                fill.ending = "finished";
                read(entry, fill.bottle, f.after());
            }
        } else if (fact instanceof Fact.FillAbandoned f) {
            Fill fill = fills.get(f.fill());
            if (fill != null) {
                fill.ending = "abandoned";
            }
        } else if (fact instanceof Fact.FillRecorded f) {
            Fill fill = new Fill(f.fill(), f.bottle(), f.target(), f.before(), entry);
            fill.after = f.after();
            fill.ending = "finished";
            fills.put(f.fill(), fill);
            read(entry, f.bottle(), f.before());
            f.stages().forEach(stage -> take(entry, f.fill(), stage));
            read(entry, f.bottle(), f.after());
        }
    }

    private void take(Entry entry, FillId id, Stage stage) {
        Fill fill = fills.get(id);
        if (fill == null) {
            return;
        }
        fill.stages++;
        read(entry, stage.supply(), stage.supplyBefore());
        read(entry, fill.bottle, stage.bottleAfter());
        read(entry, stage.supply(), stage.supplyAfter());
        Reading before = stage.supplyBefore();
        Reading after = stage.supplyAfter();
        stages.add(new Cells(units)
                .text(id.value())
                .number(fill.stages)
                .text(name(fill.bottle))
                .text(name(stage.supply()))
                .time(stage.bottleAfter().at())
                .pressure(stage.bottleAfter().pressure())
                .pressure(before == null ? null : before.pressure())
                .pressure(after == null ? null : after.pressure())
                .number(entry.seq())
                .row());
    }

    private void read(Entry entry, CylinderId cylinder, @Nullable Reading reading) {
        if (reading != null) {
            readings.add(new Cells(units)
                    .text(cylinder instanceof SupplyId ? "supply" : "bottle")
                    .text(name(cylinder))
                    .text(cylinder.value())
                    .time(reading.at())
                    .reading(reading)
                    .text(reading.gauge())
                    .text(entry.origin().author())
                    .number(entry.seq())
                    .row());
        }
    }

    private List<String> row(Fill fill) {
        Reading after = fill.after;
        return new Cells(units)
                .text(fill.id.value())
                .text(name(fill.bottle))
                .time(fill.before.at())
                .pressure(fill.before.pressure())
                .pressure(fill.target)
                .time(after == null ? null : after.at())
                .pressure(after == null ? null : after.pressure())
                .text(fill.ending)
                .number(fill.stages)
                .text(fill.begun.origin().author())
                .number(fill.begun.seq())
                .row();
    }

    private String name(CylinderId cylinder) {
        if (cylinder instanceof SupplyId supply) {
            return bench.getSupply(supply).details().name();
        }
        return bench.getBottle((BottleId) cylinder).details().name();
    }

    /** A fill as far as the entries read so far tell it. */
    private static final class Fill {

        private final FillId id;
        private final BottleId bottle;
        private final @Nullable StatedPressure target;
        private final Reading before;
        private final Entry begun;
        private @Nullable Reading after;
        private String ending = "open";
        private int stages;

        Fill(FillId id, BottleId bottle, @Nullable StatedPressure target, Reading before, Entry begun) {
            this.id = id;
            this.bottle = bottle;
            this.target = target;
            this.before = before;
            this.begun = begun;
        }
    }
}
