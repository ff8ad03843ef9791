package org.lowfirst.web.money;

import java.util.List;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * What a fill costs, and a worked example of it.
 *
 * @param example fills worked out by what stands in the form; empty while that makes no tariff
 * @param tariffs all tariffs, latest first
 * @param form what was typed
 * @param key key of the form
 */
public record PricesPage(Place place, List<Example> example, List<Line> tariffs, Form form, String key)
        implements Page {

    public PricesPage {
        example = List.copyOf(example);
        tariffs = List.copyOf(tariffs);
    }

    /** @param working how it was worked out */
    public record Example(String what, String amount, String working) {}

    /**
     * @param standing whether it is in force, to come or past, in words
     * @param sentence the prices
     */
    public record Line(String from, String standing, String sentence) {}

    @Override
    public String template() {
        return "prices";
    }

    @Override
    public String title(Words words) {
        return words.of("prices.title");
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
