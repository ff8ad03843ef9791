package org.lowfirst.web.warm;

import gg.jte.Content;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * A fill on a clock: how long each stage takes at a rise of the gauge, how warm the gas gets, what it settles to.
 *
 * @param place the bench
 * @param bottle id of the bottle
 * @param name its name
 * @param back address of the plan this came from
 * @param rateUnit unit of the rise, e.g. "bar a minute"
 * @param form what was typed
 * @param sheet the schedule; null when there is none
 */
public record TimePage(
        Place place,
        String bottle,
        String name,
        String back,
        String rateUnit,
        Form form,
        @Nullable TimeSheet sheet) implements Page {

    /**
     * @param total how long it takes
     * @param settles what the bottle settles to, without unit
     * @param full contents as part of what it may or shall get
     * @param warmest highest temperature of the gas in the bottle
     * @param coldest lowest temperature of the gas in a supply
     * @param legs the stretches in order
     * @param paces the same fill gentler and faster
     * @param fastest the fastest way that keeps the rise as a limit; empty when there is none
     * @param picture gauge and heat against time; {@code legs} says the same
     * @param limits published limits of the rise
     * @param cautions to be shown with it
     */
    public record TimeSheet(
            String total,
            String settles,
            String full,
            String warmest,
            String coldest,
            List<LegLine> legs,
            List<PaceLine> paces,
            String fastest,
            Content picture,
            List<String> limits,
            List<String> cautions) {

        public TimeSheet {
            legs = List.copyOf(legs);
            paces = List.copyOf(paces);
            limits = List.copyOf(limits);
            cautions = List.copyOf(cautions);
        }
    }

    /** One stretch. */
    public record LegLine(String what, String minutes, String gauge, String warmest) {}

    /** One pace and what comes of it. */
    public record PaceLine(String rate, String minutes, String warmest, String settles) {}

    @Override
    public String template() {
        return "time";
    }

    @Override
    public String title(Words words) {
        return words.of("time.title", name);
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
