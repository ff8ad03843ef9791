package org.lowfirst.web.settings;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.station.Language;
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

    public List<String> pressures() {
        return SettingsFields.PRESSURES.stream().map(PressureUnit::symbol).toList();
    }

    public List<String> temperatures() {
        return SettingsFields.TEMPERATURES.stream().map(TemperatureUnit::symbol).toList();
    }

    public List<String> gases() {
        return SettingsFields.VOLUMES.stream().map(VolumeUnit::symbol).toList();
    }

    /** Languages by tag, each by its own name. */
    public List<Language> languages() {
        return List.of(Language.values());
    }

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
