package org.lowfirst.web.hub;

import java.util.List;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * What else there is in a place.
 *
 * @param place the bench
 * @param lead one sentence about the place
 * @param alert what must be done soon; empty when nothing must
 * @param lines the pages it leads on to
 */
public record HubPage(Place place, Section section, String lead, String alert, List<Line> lines) implements Page {

    public HubPage {
        lines = List.copyOf(lines);
    }

    /** One page to go to. */
    public record Line(String name, String what, String address) {}

    @Override
    public String template() {
        return "hub";
    }

    @Override
    public String title(Words words) {
        return words.of(section.key());
    }

    @Override
    public Place at() {
        return place;
    }
}
