package org.lowfirst.web.bottles;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.web.gate.FitTag;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * The register of bottles.
 *
 * @param place the bench
 * @param bottles in use by name, then retired ones
 */
public record BottlesPage(Place place, List<Line> bottles) implements Page {

    public BottlesPage {
        bottles = List.copyOf(bottles);
    }

    /**
     * @param id its id
     * @param name its name
     * @param owner whose it is; empty when nobody said
     * @param size water volume and marked pressure
     * @param basis how the water volume is known
     * @param latest what it read last and when; empty when nobody read it
     * @param retired whether it is no longer used
     * @param fit whether it may be filled; null for a retired one
     */
    public record Line(
            String id,
            String name,
            String owner,
            String size,
            String basis,
            String latest,
            boolean retired,
            @Nullable FitTag fit) {}

    @Override
    public String template() {
        return "bottles";
    }

    @Override
    public String title(Words words) {
        return words.of("bottles.title");
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
