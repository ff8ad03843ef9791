package org.lowfirst.web.bottles;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.web.cylinder.VolumeFields.Choice;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.verdict.Standing;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * One bottle, to be added or changed.
 *
 * @param place the bench
 * @param id its id; empty for a new one
 * @param name its name; empty for a new one
 * @param unit symbol of the unit of pressure
 * @param standing what its readings come to; null for one that was never read
 * @param sizes generic sizes to choose from
 * @param form what was typed
 * @param key key of the form
 */
public record BottlePage(
        Place place,
        String id,
        String name,
        String unit,
        @Nullable Standing standing,
        List<Choice> sizes,
        Form form,
        String key)
        implements Page {

    public BottlePage {
        sizes = List.copyOf(sizes);
    }

    public boolean fresh() {
        return id.isEmpty();
    }

    @Override
    public String template() {
        return "bottle";
    }

    @Override
    public String title(Words words) {
        return fresh() ? words.of("bottle.new.title") : words.of("bottle.title", name);
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
