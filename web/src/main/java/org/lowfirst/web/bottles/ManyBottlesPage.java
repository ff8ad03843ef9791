package org.lowfirst.web.bottles;

import java.util.List;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * Many bottles at once: where to paste them, or the rows read from what was pasted.
 *
 * @param rows the rows read; empty before anything was pasted
 * @param faulty how many of them are not understood or break a rule
 * @param leftOut headings that were not recognised, in one text; empty when all were
 * @param form what was typed
 * @param key key of the form
 */
public record ManyBottlesPage(Place place, List<Row> rows, int faulty, String leftOut, Form form, String key)
        implements Page {

    public ManyBottlesPage {
        rows = List.copyOf(rows);
    }

    /**
     * @param number from 1
     * @param summary what it says in one line
     * @param sound whether it can be entered
     * @param fields its fields
     */
    public record Row(int number, String summary, boolean sound, List<Field> fields) {

        public Row {
            fields = List.copyOf(fields);
        }

        /** Name of the field that leaves the row out. */
        public String out() {
            return ManyRows.field(number - 1, "out");
        }
    }

    /** @param name name of the field in the form */
    public record Field(String name, String label) {}

    @Override
    public String template() {
        return rows.isEmpty() ? "bottles-paste" : "bottles-many";
    }

    @Override
    public String title(Words words) {
        return words.of("many.title");
    }

    @Override
    public Section section() {
        return Section.BOTTLES;
    }

    @Override
    public Place at() {
        return place;
    }
}
