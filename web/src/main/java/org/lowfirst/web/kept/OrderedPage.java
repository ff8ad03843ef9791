package org.lowfirst.web.kept;

import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * What is wrong with saying that supplies were ordered.
 *
 * @param place the bench
 * @param form what was typed
 * @param key of the form
 */
public record OrderedPage(Place place, Form form, String key) implements Page {

    @Override
    public String template() {
        return "ordered";
    }

    @Override
    public String title(Words words) {
        return words.of("forecast.ordered.now");
    }

    @Override
    public Section section() {
        return Section.AHEAD;
    }

    @Override
    public Place at() {
        return place;
    }
}
