package org.lowfirst.web.bank;

import java.util.List;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * What the gauges of the bank show, entered for all supplies at once or for one.
 *
 * @param place the bench
 * @param rows one per supply, rank 1 first
 * @param gauges gauges to choose from; empty when there is one only
 * @param usual the temperature that stands in when none is typed, e.g. "20 C"
 * @param unit symbols of the units of pressure and temperature
 * @param form what was typed
 * @param key key of the form
 * @param saved names of the supplies whose readings were just saved, when others were refused
 */
public record ReadingsPage(
        Place place,
        List<Row> rows,
        List<String> gauges,
        String usual,
        UnitWords unit,
        Form form,
        String key,
        List<String> saved)
        implements Page {

    public ReadingsPage {
        rows = List.copyOf(rows);
        gauges = List.copyOf(gauges);
        saved = List.copyOf(saved);
    }

    /**
     * @param field name of the field
     * @param rank rank of the supply
     * @param name its name
     * @param expected what its gauge should show, e.g. "62 bar"
     */
    public record Row(String field, int rank, String name, String expected) {}

    /** Symbols of units, e.g. "bar" and "C". */
    public record UnitWords(String pressure, String temperature) {}

    @Override
    public String template() {
        return "readings";
    }

    @Override
    public String title(Words words) {
        return words.of("readings.title");
    }

    @Override
    public Section section() {
        return Section.BANK;
    }

    @Override
    public Place at() {
        return place;
    }
}
