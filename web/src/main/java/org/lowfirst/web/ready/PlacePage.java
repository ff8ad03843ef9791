package org.lowfirst.web.ready;

import java.util.List;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * Which group one bottle belongs to, and where it is meant to be.
 *
 * @param place the bench
 * @param id id of the bottle
 * @param name its name
 * @param groups names of the groups
 * @param choices where a bottle can be
 * @param form what was typed
 * @param key key of the form
 */
public record PlacePage(
        org.lowfirst.web.view.Place place,
        String id,
        String name,
        List<String> groups,
        List<Choice> choices,
        Form form,
        String key)
        implements Page {

    public PlacePage {
        groups = List.copyOf(groups);
        choices = List.copyOf(choices);
    }

    /** @param value value of the choice */
    public record Choice(String value, String what) {}

    @Override
    public String template() {
        return "place";
    }

    @Override
    public String title(Words words) {
        return words.of("place.title", name);
    }

    @Override
    public Section section() {
        return Section.BOTTLES;
    }

    @Override
    public org.lowfirst.web.view.Place at() {
        return place;
    }
}
