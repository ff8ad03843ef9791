package org.lowfirst.web.warm;

import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * Whether warm fills may stop above the marked pressure.
 *
 * @param place the bench
 * @param permission who allowed it and what is followed; empty while nobody did
 * @param form what was typed
 * @param key key of the form
 */
public record WarmStopsPage(Place place, String permission, Form form, String key) implements Page {

    public boolean allowed() {
        return !permission.isEmpty();
    }

    @Override
    public String template() {
        return "warm-stops";
    }

    @Override
    public String title(Words words) {
        return words.of("warm-stops.title");
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
