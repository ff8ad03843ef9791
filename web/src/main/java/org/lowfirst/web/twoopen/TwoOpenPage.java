package org.lowfirst.web.twoopen;

import java.util.List;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * Which two valves were open together, and what the gauges showed afterwards.
 *
 * @param place the bench
 * @param supplies the supplies to choose from, bank by bank, rank 1 first
 * @param unit symbol of the unit of pressure
 * @param temperatureUnit symbol of the unit of temperature
 * @param usual the temperature that stands in when none is typed
 * @param form what was typed
 * @param key key of the form
 */
public record TwoOpenPage(
        Place place, List<Choice> supplies, String unit, String temperatureUnit, String usual, Form form, String key)
        implements Page {

    public TwoOpenPage {
        supplies = List.copyOf(supplies);
    }

    /**
     * @param value value of the field
     * @param label name and what its gauge should show
     */
    public record Choice(String value, String label) {}

    @Override
    public String template() {
        return "two-open";
    }

    @Override
    public String title(Words words) {
        return words.of("two-open.title");
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
