package org.lowfirst.web.gauges;

import java.util.List;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * The gauges of a bench with what the journal has taught about them.
 *
 * @param place the bench
 * @param gauges those in use, those taken for granted, those no longer in use
 * @param leftOut that the oldest entries were not gone through; empty when all were
 * @param refused readings of the journal that could not be used, in sentences
 */
public record GaugesPage(Place place, List<Line> gauges, String leftOut, List<String> refused) implements Page {

    public GaugesPage {
        gauges = List.copyOf(gauges);
        refused = List.copyOf(refused);
    }

    /** Where a gauge stands. */
    public enum Standing {
        IN_USE,
        ASSUMED,
        GONE
    }

    /**
     * @param name its name
     * @param link page to describe it anew; empty when there is nothing to describe anew
     * @param use where it is read
     * @param standing where it stands
     * @param calibrated when it was last compared with a standard; empty when nobody said
     * @param sentence scale, largest error, and what was learned
     * @param learned whether the journal has taught something
     */
    public record Line(
            String name,
            String link,
            String use,
            Standing standing,
            String calibrated,
            String sentence,
            boolean learned) {}

    @Override
    public String template() {
        return "gauges";
    }

    @Override
    public String title(Words words) {
        return words.of("gauges.title");
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
