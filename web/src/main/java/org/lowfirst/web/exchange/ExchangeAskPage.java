package org.lowfirst.web.exchange;

import java.util.List;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * Asks once more before an exchange is begun, and says what it means.
 *
 * @param place the bench
 * @param id id of the supply
 * @param name its name
 * @param means what it means, as sentences
 * @param other what speaks for another one; empty when nothing does
 * @param form what was typed
 * @param key key of the form
 */
public record ExchangeAskPage(
        Place place, String id, String name, List<String> means, String other, Form form, String key) implements Page {

    public ExchangeAskPage {
        means = List.copyOf(means);
    }

    @Override
    public String template() {
        return "exchange-ask";
    }

    @Override
    public String title(Words words) {
        return words.of("exchange.ask.title", name);
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
