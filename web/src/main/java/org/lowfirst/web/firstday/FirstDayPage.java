package org.lowfirst.web.firstday;

import java.util.List;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * What a bench needs before its first fill, in order.
 *
 * @param steps the steps
 * @param open how many of them are still to be done
 */
public record FirstDayPage(Place place, List<Step> steps, int open) implements Page {

    public FirstDayPage {
        steps = List.copyOf(steps);
    }

    /**
     * @param name what is to be done
     * @param told how it stands
     * @param done whether it is done
     * @param next whether it is the first one that is not
     * @param acts where it is done, the usual way first
     */
    public record Step(String name, String told, boolean done, boolean next, List<Act> acts) {

        public Step {
            acts = List.copyOf(acts);
        }
    }

    /** @param address where it leads */
    public record Act(String name, String address) {}

    @Override
    public String template() {
        return "first-day";
    }

    @Override
    public String title(Words words) {
        return words.of("first-day.title");
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
