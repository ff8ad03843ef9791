package org.lowfirst.web.money;

import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * Who pays for one fill.
 *
 * @param fill the fill in words
 */
public record PayerPage(Place place, String fill, PayerPart payer) implements Page {

    @Override
    public String template() {
        return "payer";
    }

    @Override
    public String title(Words words) {
        return words.of("payer.title");
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
