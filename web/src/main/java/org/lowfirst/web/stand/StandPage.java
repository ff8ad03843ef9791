package org.lowfirst.web.stand;

import java.util.List;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * How one supply stands: when it is opened, in which bank it is, what came on paper with it.
 *
 * @param place the bench
 * @param id its id
 * @param name its name
 * @param turns the ways to use it, as values of the field and in words
 * @param banks names of banks there are
 * @param form what was typed
 * @param key key of the form
 */
public record StandPage(
        Place place, String id, String name, List<Choice> turns, List<String> banks, Form form, String key)
        implements Page {

    public StandPage {
        turns = List.copyOf(turns);
        banks = List.copyOf(banks);
    }

    /**
     * @param value value of the field
     * @param label in words
     * @param what what it means
     */
    public record Choice(String value, String label, String what) {}

    @Override
    public String template() {
        return "stand";
    }

    @Override
    public String title(Words words) {
        return words.of("stand.title", name);
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
