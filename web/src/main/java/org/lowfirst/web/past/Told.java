package org.lowfirst.web.past;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.CylinderId;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Stage;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.Supply;
import org.lowfirst.station.SupplyId;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Sender;

/** What somebody tells of a fill that is over. Not thread-safe. */
final class Told {

    private final BenchNow now;
    private final Reader reader;
    private @Nullable BottleId bottle;
    private @Nullable Instant at;
    private @Nullable Reading before;
    private @Nullable Reading after;
    private @Nullable StatedPressure target;
    private List<Stage> stages = List.of();

    private Told(BenchNow now, Reader reader) {
        this.now = now;
        this.reader = reader;
    }

    /** @param rows so many stages can be told */
    static Told read(Map<String, String> typed, BenchNow now, int rows) {
        Told told = new Told(now, new Reader(typed, now.bench().settings().units(), now.words()));
        told.read(rows);
        return told;
    }

    private void read(int rows) {
        bottle = findBottle().orElse(null);
        at = time();
        @Nullable StatedPressure beforeShown = pressure("before", bottle);
        @Nullable StatedPressure afterShown = pressure("after", bottle);
        target = reader.pressureIfTyped("target");
        @Nullable StatedTemperature temperature = reader.temperatureIfTyped("temperature");
        stages = stages(rows, temperature);
        reader.required(Sender.WHO, "fault.who");
        if (!Sender.of(reader.form().typed()).hasKey()) {
            reader.fault("form", now.words().of("fault.key"));
        }
        before = beforeShown == null ? null : reading(beforeShown, temperature);
        after = afterShown == null ? null : reading(afterShown, temperature);
    }

    Form form() {
        return reader.form();
    }

    /** Everything needed was understood. */
    boolean ready() {
        return reader.form().sound() && bottle != null && at != null && before != null && after != null;
    }

    @Nullable
    BottleId bottle() {
        return bottle;
    }

    @Nullable
    Instant at() {
        return at;
    }

    @Nullable
    Reading before() {
        return before;
    }

    @Nullable
    Reading after() {
        return after;
    }

    @Nullable
    StatedPressure target() {
        return target;
    }

    List<Stage> stages() {
        return stages;
    }

    private Optional<BottleId> findBottle() {
        Optional<BottleId> found = now.bench().listBottles().stream()
                .map(Bottle::id)
                .filter(id -> id.value().equals(reader.text("bottle")))
                .findFirst();
        if (found.isEmpty()) {
            reader.fault("bottle", now.words().of("past.choose"));
        }
        return found;
    }

    /** The time typed, at the bench; null with a fault when it cannot be read or lies ahead. */
    private @Nullable Instant time() {
        reader.required("day", "past.day.empty");
        @Nullable LocalDate day = reader.dayIfTyped("day");
        reader.required("time", "past.time.empty");
        if (day == null || reader.empty("time")) {
            return null;
        }
        try {
            Instant typed = LocalTime.parse(reader.text("time").replace('.', ':'))
                    .atDate(day)
                    .atZone(now.times().zone())
                    .toInstant();
            if (typed.isAfter(now.now())) {
                reader.fault(
                        "time",
                        now.words()
                                .of(
                                        "rule.time_in_future",
                                        "",
                                        now.times().full(typed),
                                        now.times().full(now.now())));
                return null;
            }
            return typed;
        } catch (DateTimeParseException unreadable) {
            reader.fault("time", now.words().of("past.time.unreadable", reader.text("time")));
            return null;
        }
    }

    private @Nullable StatedPressure pressure(String field, @Nullable CylinderId cylinder) {
        @Nullable StatedPressure shown = reader.pressure(field);
        if (shown != null && cylinder != null) {
            now.offScale(cylinder, shown).ifPresent(fault -> reader.fault(field, fault));
        }
        return shown;
    }

    /** The rows in which something was typed, in their order. */
    private List<Stage> stages(int rows, @Nullable StatedTemperature temperature) {
        List<Stage> told = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            String bottleField = "stage-bottle-" + row;
            String leftField = "stage-left-" + row;
            if (reader.empty(bottleField) && reader.empty(leftField)) {
                continue;
            }
            @Nullable SupplyId supply = supply(row);
            @Nullable StatedPressure shown = pressure(bottleField, bottle);
            @Nullable StatedPressure left = reader.empty(leftField) ? null : pressure(leftField, supply);
            if (supply != null && shown != null) {
                told.add(new Stage(
                        supply, reading(shown, temperature), null, left == null ? null : reading(left, temperature)));
            }
        }
        return told;
    }

    private @Nullable SupplyId supply(int row) {
        String field = "stage-supply-" + row;
        Optional<SupplyId> found = now.bench().supplies().values().stream()
                .map(Supply::id)
                .filter(id -> id.value().equals(reader.text(field)))
                .findFirst();
        if (found.isEmpty()) {
            reader.fault(field, now.words().of("past.stage.supply"));
        }
        return found.orElse(null);
    }

    private Reading reading(StatedPressure pressure, @Nullable StatedTemperature temperature) {
        Reading read = now.reading(pressure, temperature);
        return new Reading(
                pressure, at == null ? now.now() : at, read.temperature(), read.temperatureAssumed(), read.gauge());
    }
}
