package org.lowfirst.web.bank;

import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * How a supply came, against a full one, with a note for the supplier.
 *
 * @param place the bench
 * @param supply name of the supply
 * @param back address of its page
 * @param sheet what to say
 */
public record DeliveryPage(Place place, String supply, String back, Sheet sheet) implements Page {

    /**
     * @param said how it came
     * @param rank where it stands in the bank by what it reads
     * @param note text for the supplier; empty when nothing can be compared
     */
    public record Sheet(String said, String rank, String note) {}

    @Override
    public String template() {
        return "delivery";
    }

    @Override
    public String title(Words words) {
        return words.of("delivery.title", supply);
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
