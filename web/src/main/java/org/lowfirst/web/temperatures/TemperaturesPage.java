package org.lowfirst.web.temperatures;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.web.cylinder.CylinderChoice;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * What a gauge would show were the same gas warmer or colder.
 *
 * @param place the bench
 * @param cylinders cylinders to choose from
 * @param unit symbols of the units
 * @param form what was typed
 * @param sheet what comes of it; null before anything was asked
 */
public record TemperaturesPage(
        Place place,
        List<CylinderChoice> cylinders,
        UnitWords unit,
        Form form,
        @Nullable Sheet sheet) implements Page {

    public TemperaturesPage {
        cylinders = List.copyOf(cylinders);
    }

    /** Symbols of units, and the usual temperature of the bench. */
    public record UnitWords(String pressure, String temperature, String usual) {}

    /**
     * @param said the question in words
     * @param full how full it is and what it holds; empty without a cylinder
     * @param rows one for each temperature, coldest first
     * @param rated whether the rows say what a full one shows
     */
    public record Sheet(String said, String full, List<Row> rows, boolean rated) {

        public Sheet {
            rows = List.copyOf(rows);
        }
    }

    /**
     * @param temperature temperature of the gas
     * @param reading what the gauge shows then
     * @param full what a full one shows then; empty without a cylinder
     * @param asked whether somebody asked for this one
     */
    public record Row(String temperature, String reading, String full, boolean asked) {}

    @Override
    public String template() {
        return "temperatures";
    }

    @Override
    public String title(Words words) {
        return words.of("temperatures.title");
    }

    @Override
    public Section section() {
        return Section.BENCH;
    }

    @Override
    public Place at() {
        return place;
    }
}
