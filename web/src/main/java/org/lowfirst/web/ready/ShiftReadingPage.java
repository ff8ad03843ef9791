package org.lowfirst.web.ready;

import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * What one bottle reads in this shift.
 *
 * @param place the bench
 * @param id id of the bottle
 * @param name its name
 * @param limits its group and what that asks for, in words
 * @param latest what it read last; empty when nobody read it
 * @param unit symbol of the unit of pressure
 * @param left how many are still to be read, this one included; 0 when this one was read
 * @param skip address of the next one; empty when there is none
 * @param form what was typed
 * @param key key of the form
 */
public record ShiftReadingPage(
        Place place,
        String id,
        String name,
        String limits,
        String latest,
        String unit,
        int left,
        String skip,
        Form form,
        String key)
        implements Page {

    @Override
    public String template() {
        return "ready-read";
    }

    @Override
    public String title(Words words) {
        return name;
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
