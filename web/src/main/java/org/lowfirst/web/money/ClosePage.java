package org.lowfirst.web.money;

import java.util.List;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * Asks before a month is closed, repeating what will stand.
 *
 * @param month as in an address
 * @param monthName as people say it
 * @param facts what will stand for ever
 * @param after where what comes late is booked
 * @param warnings what is better settled before
 * @param form what was typed
 * @param key key of the form
 */
public record ClosePage(
        Place place,
        String month,
        String monthName,
        List<String> facts,
        String after,
        List<String> warnings,
        Form form,
        String key)
        implements Page {

    public ClosePage {
        facts = List.copyOf(facts);
        warnings = List.copyOf(warnings);
    }

    @Override
    public String template() {
        return "close";
    }

    @Override
    public String title(Words words) {
        return words.of("close.title", monthName);
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
