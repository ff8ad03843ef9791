package org.lowfirst.web.gauges;

import java.util.List;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * One gauge, to be described, replaced or taken out of use.
 *
 * @param place the bench
 * @param name its name; empty for a new one
 * @param taught what the journal has taught about it; empty when nothing
 * @param units units a dial can have
 * @param form what was typed
 * @param key key of the form
 */
public record GaugePage(Place place, String name, String taught, List<String> units, Form form, String key)
        implements Page {

    public GaugePage {
        units = List.copyOf(units);
    }

    public boolean fresh() {
        return name.isEmpty();
    }

    @Override
    public String template() {
        return "gauge";
    }

    @Override
    public String title(Words words) {
        return fresh() ? words.of("gauge.new.title") : words.of("gauge.title", name);
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
