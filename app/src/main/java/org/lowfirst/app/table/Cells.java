package org.lowfirst.app.table;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedQuantity;
import org.lowfirst.station.Units;

/** One row of a table being written. Not thread-safe. */
final class Cells {

    /** Water volumes are headed in litres on every bench. */
    static final String VOLUME_UNIT = "L";

    private final List<String> cells = new ArrayList<>();
    private final Units units;

    Cells(Units units) {
        this.units = units;
    }

    Cells text(@Nullable String text) {
        cells.add(text == null ? "" : CellText.guarded(text));
        return this;
    }

    Cells number(long number) {
        cells.add(Long.toString(number));
        return this;
    }

    Cells pressure(@Nullable StatedQuantity pressure) {
        return quantity(pressure, units.pressure().symbol());
    }

    Cells volume(StatedQuantity volume) {
        return quantity(volume, VOLUME_UNIT);
    }

    /** Pressure, temperature and whether a thermometer was read. */
    Cells reading(@Nullable Reading reading) {
        if (reading == null) {
            return text("").text("").text("");
        }
        return pressure(reading.pressure())
                .quantity(reading.temperature(), units.temperature().symbol())
                .yes(reading.temperatureAssumed());
    }

    Cells yes(boolean yes) {
        return text(yes ? "yes" : "");
    }

    /** ISO 8601, in UTC. */
    Cells time(@Nullable Instant at) {
        return text(at == null ? "" : DateTimeFormatter.ISO_INSTANT.format(at));
    }

    List<String> row() {
        return List.copyOf(cells);
    }

    /** The digits as typed; with their own unit when it is not the one that heads the column. */
    private Cells quantity(@Nullable StatedQuantity quantity, String headed) {
        if (quantity == null) {
            return text("");
        }
        String digits = quantity.value().toPlainString();
        cells.add(quantity.symbol().equals(headed) ? digits : digits + " " + quantity.symbol());
        return this;
    }
}
