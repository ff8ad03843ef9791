package org.lowfirst.web.settings;

import org.jspecify.annotations.Nullable;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * What a bench is set to; the same form sets one up.
 *
 * @param place the bench; null while it is being set up
 * @param demo whether it is the demo bench, which can be removed as a whole
 * @param form what was typed
 * @param key key of the form
 */
public record SettingsPage(@Nullable Place place, boolean demo, Form form, String key) implements Page {

    public boolean fresh() {
        return place == null;
    }

    /** Where the form is sent. */
    public String action() {
        return place == null ? "/new" : place.path("/settings");
    }

    @Override
    public String template() {
        return "settings";
    }

    @Override
    public String title(Words words) {
        return words.of(fresh() ? "settings.new.title" : "settings.title");
    }

    @Override
    public Section section() {
        return Section.BENCH;
    }

    @Override
    public @Nullable Place at() {
        return place;
    }
}
