package org.lowfirst.app.table;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.lowfirst.app.words.Wording;
import org.lowfirst.station.Units;

/** The first rows of tables, in one language, each unit in brackets behind its quantity. */
final class Headings {

    private final Wording wording;
    private final Units units;

    Headings(Locale locale, Units units) {
        this.wording = Wording.of(Headings.class, locale);
        this.units = units;
    }

    List<String> of(TableKind kind) {
        return Arrays.stream(text("table." + kind.key()).split(" "))
                .map(column -> heading("column." + column))
                .toList();
    }

    String heading(BottleColumn column) {
        return heading("column." + column.key());
    }

    private String heading(String key) {
        return wording.text(
                key,
                Map.of(
                        "pressure", units.pressure().symbol(),
                        "temperature", units.temperature().symbol()));
    }

    private String text(String key) {
        return wording.text(key, Map.of());
    }
}
