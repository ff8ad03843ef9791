package org.lowfirst.web.due;

import gg.jte.Content;
import java.util.List;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * What falls due.
 *
 * @param place the bench
 * @param past what is past, the longest first
 * @param soon what is left for so many days or fewer
 * @param later everything else with a last good day
 * @param unmarked bottles nothing is known of, with the address where their marking is entered
 * @param undated bottles of which no day follows from what was entered
 * @param calendar address of the calendar file on this computer
 */
public record DuePage(
        Place place,
        List<Line> past,
        List<Line> soon,
        List<Line> later,
        List<Bottle> unmarked,
        List<Bottle> undated,
        String calendar)
        implements Page {

    public DuePage {
        past = List.copyOf(past);
        soon = List.copyOf(soon);
        later = List.copyOf(later);
        unmarked = List.copyOf(unmarked);
        undated = List.copyOf(undated);
    }

    /**
     * @param mark shape for the eye
     * @param what what falls due
     * @param link where something can be done about it
     * @param when last good day and how far off it is
     * @param source who says so
     */
    public record Line(Content mark, String what, String link, String when, String source) {}

    /** A bottle and its page. */
    public record Bottle(String name, String link) {}

    /** Whether there is nothing at all to show. */
    public boolean empty() {
        return past.isEmpty() && soon.isEmpty() && later.isEmpty();
    }

    @Override
    public String template() {
        return "due";
    }

    @Override
    public String title(Words words) {
        return words.of("due.title");
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
