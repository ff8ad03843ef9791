package org.lowfirst.web.kept;

import java.util.List;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * What the bench looks ahead with, to read and to change.
 *
 * @param place the bench
 * @param figures the form of the figures
 * @param groups the figures, grouped
 * @param event the form of a planned event
 * @param events what is planned
 * @param back where the form of the figures leads back to; empty for this page
 * @param key of the forms
 */
public record KeptPage(
        Place place, Form figures, List<Group> groups, Form event, List<EventLine> events, String back, String key)
        implements Page {

    public KeptPage {
        groups = List.copyOf(groups);
        events = List.copyOf(events);
    }

    /** Figures that belong together. */
    public record Group(String name, List<FigureLine> lines) {}

    /**
     * @param field name of the field
     * @param hint where it comes from; empty when nothing is known
     */
    public record FigureLine(String field, String label, String hint) {}

    /**
     * Something planned.
     *
     * @param what name and days
     * @param name as it is sent to drop it
     * @param from first day, as it is sent to drop it
     */
    public record EventLine(String what, String fills, String name, String from) {}

    @Override
    public String template() {
        return "kept";
    }

    @Override
    public String title(Words words) {
        return words.of("kept.title");
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
