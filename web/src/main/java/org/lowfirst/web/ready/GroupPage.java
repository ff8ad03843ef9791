package org.lowfirst.web.ready;

import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * One group of bottles, to be described or ended.
 *
 * @param place the bench
 * @param name its name; empty for a new one
 * @param unit symbol of the unit of pressure
 * @param form what was typed
 * @param key key of the form
 */
public record GroupPage(Place place, String name, String unit, Form form, String key) implements Page {

    public boolean fresh() {
        return name.isEmpty();
    }

    @Override
    public String template() {
        return "group";
    }

    @Override
    public String title(Words words) {
        return fresh() ? words.of("group.new.title") : name;
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
