package org.lowfirst.web.money;

import java.util.List;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * What the supplier was paid, and the form for more.
 *
 * @param currency currency of the accounts; empty before anything was entered in one
 * @param kinds what can be paid
 * @param serials serial numbers known, to choose from
 * @param costs latest first
 * @param form what was typed
 * @param key key of the form
 */
public record CostsPage(
        Place place, String currency, List<Kind> kinds, List<String> serials, List<Line> costs, Form form, String key)
        implements Page {

    public CostsPage {
        kinds = List.copyOf(kinds);
        serials = List.copyOf(serials);
        costs = List.copyOf(costs);
    }

    /** @param value as it is sent */
    public record Kind(String value, String label) {}

    /** @param detail serial number and note; empty for neither */
    public record Line(String day, String what, String detail, String amount, long entry) {}

    @Override
    public String template() {
        return "costs";
    }

    @Override
    public String title(Words words) {
        return words.of("costs.title");
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
