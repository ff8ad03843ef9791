package org.lowfirst.web.session;

import gg.jte.Content;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * Several bottles on one bank: which are there, what they read and shall read, and the plan.
 *
 * @param place the bench
 * @param choosing whether bottles are being chosen; else their readings are typed
 * @param bottles to choose from, or the chosen ones
 * @param unit unit of pressure
 * @param usual usual temperature of the bench, with unit
 * @param form what was typed
 * @param key key for beginning the session
 * @param bankEmpty whether there is nothing to fill from
 * @param sheet the plan; null when there is none
 */
public record SessionPage(
        Place place,
        boolean choosing,
        List<Line> bottles,
        String unit,
        String usual,
        Form form,
        String key,
        boolean bankEmpty,
        @Nullable SessionSheet sheet)
        implements Page {

    public SessionPage {
        bottles = List.copyOf(bottles);
    }

    /** Names of the fields of a bottle. */
    public static List<String> fields() {
        return List.of("reading", "target", "floor", "priority");
    }

    /** A bottle to choose. */
    public record Line(String id, String name, String size, String latest) {}

    /**
     * @param ready how many end ready, e.g. "3 of 4"
     * @param all whether all do
     * @param full how many of them at their target
     * @param time when the last valve is shut
     * @param changes hose changes and supplies opened
     * @param picture bottles and supplies with the order; {@code steps} say the same
     * @param steps the stages in order
     * @param ends what becomes of each bottle
     * @param habits the plan beside the usual habits
     * @param notes why, and what would help
     * @param after the bank afterwards
     * @param cutOff whether the search was ended before it was through
     */
    public record SessionSheet(
            String ready,
            boolean all,
            String full,
            String time,
            String changes,
            Content picture,
            List<StepLine> steps,
            List<EndLine> ends,
            List<HabitLine> habits,
            List<String> notes,
            String after,
            boolean cutOff) {

        public SessionSheet {
            steps = List.copyOf(steps);
            ends = List.copyOf(ends);
            habits = List.copyOf(habits);
            notes = List.copyOf(notes);
        }
    }

    /**
     * One stage.
     *
     * @param start when it begins
     * @param what bottle and supply
     * @param bottle how the bottle rises
     * @param ends when to shut
     * @param link starts this stage as a fill; empty when there is too little to it
     */
    public record StepLine(int number, String start, String what, String bottle, String ends, String link) {}

    /** What becomes of a bottle. */
    public record EndLine(String name, String words, boolean ready) {}

    /** What one way of going about it comes to. */
    public record HabitLine(String name, String ready, String left) {}

    @Override
    public String template() {
        return "session";
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
