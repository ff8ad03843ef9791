package org.lowfirst.web.ready;

import java.util.List;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * The groups of bottles, and which bottle belongs where.
 *
 * @param place the bench
 * @param groups in the order first described
 * @param bottles every bottle in use
 */
public record GroupsPage(Place place, List<Line> groups, List<Line> bottles) implements Page {

    public GroupsPage {
        groups = List.copyOf(groups);
        bottles = List.copyOf(bottles);
    }

    /**
     * @param link page where it is changed
     * @param what what is set for it, in words
     */
    public record Line(String name, String link, String what) {}

    @Override
    public String template() {
        return "groups";
    }

    @Override
    public String title(Words words) {
        return words.of("groups.title");
    }

    @Override
    public Section section() {
        return Section.BOTTLES;
    }

    @Override
    public Place at() {
        return place;
    }
}
