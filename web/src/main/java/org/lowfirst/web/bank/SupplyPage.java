package org.lowfirst.web.bank;

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
 * One supply, to be connected, changed or removed.
 *
 * @param place the bench
 * @param id its id; empty for a new one
 * @param name its name; empty for a new one
 * @param unit symbol of the unit of pressure
 * @param temperatureUnit symbol of the unit of temperature
 * @param usual the temperature that stands in when none is typed
 * @param standing what its readings come to; null for a new one
 * @param sizes generic sizes to choose from
 * @param form what was typed
 * @param key key of the form
 */
public record SupplyPage(
        Place place,
        String id,
        String name,
        String unit,
        String temperatureUnit,
        String usual,
        @Nullable Standing standing,
        List<Choice> sizes,
        Form form,
        String key)
        implements Page {

    public SupplyPage {
        sizes = List.copyOf(sizes);
    }

    public boolean fresh() {
        return id.isEmpty();
    }

    @Override
    public String template() {
        return "supply";
    }

    @Override
    public String title(Words words) {
        return fresh() ? words.of("supply.new.title") : words.of("supply.title", name);
    }

    @Override
    public Section section() {
        return Section.BANK;
    }

    @Override
    public Place at() {
        return place;
    }
}
