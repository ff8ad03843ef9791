package org.lowfirst.web.exchange;

import java.util.List;
import org.lowfirst.web.cylinder.VolumeFields.Choice;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * The supply that takes the place.
 *
 * @param place the bench
 * @param path where this exchange is
 * @param left name of the supply that left
 * @param returned what went back in it
 * @param unit symbol of the unit of pressure
 * @param temperatureUnit symbol of the unit of temperature
 * @param usual the temperature that stands in when none is typed
 * @param sizes generic sizes to choose from
 * @param form what was typed
 * @param key key of the form
 */
public record NewcomerPage(
        Place place,
        String path,
        String left,
        String returned,
        String unit,
        String temperatureUnit,
        String usual,
        List<Choice> sizes,
        Form form,
        String key)
        implements Page {

    public NewcomerPage {
        sizes = List.copyOf(sizes);
    }

    @Override
    public String template() {
        return "exchange-newcomer";
    }

    @Override
    public String title(Words words) {
        return words.of("exchange.newcomer.title", left);
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
