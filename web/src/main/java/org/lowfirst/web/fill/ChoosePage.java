package org.lowfirst.web.fill;

import java.util.List;
import org.lowfirst.web.gate.FitTag;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * Which bottle to fill.
 *
 * @param place the bench
 * @param bottles bottles in use, by name
 * @param underWay where the fill that is open goes on; empty when none is
 * @param bankEmpty whether there is nothing to fill from
 */
public record ChoosePage(Place place, List<Choice> bottles, String underWay, boolean bankEmpty) implements Page {

    public ChoosePage {
        bottles = List.copyOf(bottles);
    }

    /**
     * @param link page that asks what the bottle reads
     * @param name its name
     * @param size water volume and marked pressure
     * @param latest what it read last and when; empty when nobody read it
     * @param fit whether it may be filled, in a word and a shape
     */
    public record Choice(String link, String name, String size, String latest, FitTag fit) {}

    @Override
    public String template() {
        return "fill";
    }

    @Override
    public String title(Words words) {
        return words.of("fill.title");
    }

    @Override
    public Section section() {
        return Section.FILL;
    }

    @Override
    public Place at() {
        return place;
    }
}
