package org.lowfirst.web.session;

import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * A search that takes longer than somebody with a bottle in hand cares to wait.
 *
 * @param address asks the same again and shows the plan when it is found
 * @param enough ends the search and shows the best plan so far
 * @param progress how far it is
 */
public record SessionSearchPage(Place place, String address, String enough, String progress) implements Page {

    @Override
    public String template() {
        return "session-search";
    }

    @Override
    public String title(Words words) {
        return words.of("session.title");
    }

    @Override
    public Section section() {
        return Section.AHEAD;
    }

    @Override
    public Place at() {
        return place;
    }
}
