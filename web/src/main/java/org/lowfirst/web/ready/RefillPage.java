package org.lowfirst.web.ready;

import gg.jte.Content;
import java.util.List;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * What to fill after a call.
 *
 * @param place the bench
 * @param lines below the floor first, then by priority
 * @param unfit below the wish, but not to be filled today
 * @param unread without a reading
 * @param session address where all of them are planned in one go; empty when there are fewer than two
 */
public record RefillPage(Place place, List<Line> lines, List<Other> unfit, List<Other> unread, String session)
        implements Page {

    public RefillPage {
        lines = List.copyOf(lines);
        unfit = List.copyOf(unfit);
        unread = List.copyOf(unread);
    }

    /**
     * @param group name of its group
     * @param what what it holds and what it lacks, in words
     * @param urgent whether it is below the floor
     * @param fill address where its fill begins
     */
    public record Line(
            String name, String group, String what, boolean urgent, Content mark, Content picture, String fill) {}

    /** A bottle and where something can be done about it. */
    public record Other(String name, String link) {}

    @Override
    public String template() {
        return "refill";
    }

    @Override
    public String title(Words words) {
        return words.of("refill.title");
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
