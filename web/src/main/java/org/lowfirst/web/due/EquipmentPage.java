package org.lowfirst.web.due;

import java.util.List;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * One piece of equipment, to be looked after at an interval.
 *
 * @param place the bench
 * @param name its name; empty for a new one
 * @param kinds what it can be
 * @param form what was typed
 * @param key key of the form
 */
public record EquipmentPage(Place place, String name, List<Kind> kinds, Form form, String key) implements Page {

    public EquipmentPage {
        kinds = List.copyOf(kinds);
    }

    /** @param value value of the choice */
    public record Kind(String value, String what) {}

    public boolean fresh() {
        return name.isEmpty();
    }

    @Override
    public String template() {
        return "equipment";
    }

    @Override
    public String title(Words words) {
        return fresh() ? words.of("equipment.new.title") : name;
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
