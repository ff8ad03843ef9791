package org.lowfirst.web.stamp;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.fitness.StampInWords;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.gate.VerdictSheet;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * The stamp of one bottle.
 *
 * @param place the bench
 * @param bottle the bottle
 * @param unit symbol of the unit of pressure
 * @param stamp the line read part by part; null before one was typed
 * @param choices gases and outlets the rule book knows
 * @param plus where a plus-rating comes from; empty when none was entered
 * @param verdict what the gate says by the marking entered; null while none is
 * @param form what was typed
 * @param key key of the forms
 */
public record StampPage(
        Place place,
        BottleLine bottle,
        String unit,
        @Nullable StampInWords stamp,
        Choices choices,
        String plus,
        @Nullable VerdictSheet verdict,
        Form form,
        String key)
        implements Page {

    /**
     * @param id its id
     * @param name its name
     */
    public record BottleLine(String id, String name) {}

    /** What a label and an outlet can be by the rule book. */
    public record Choices(List<String> gases, List<String> connections) {

        public Choices {
            gases = List.copyOf(gases);
            connections = List.copyOf(connections);
        }
    }

    /** Whether the marking can be confirmed on this page: a line was read, or one had been entered before. */
    public boolean confirmable() {
        return form.chosen("step", "confirm");
    }

    /** Address of the page. */
    public String address() {
        return place.path("/bottles/" + bottle.id() + "/stamp");
    }

    /** The answers a question can have, in the order shown. */
    public static List<String> answers() {
        return List.of("yes", "no", "not-sure");
    }

    @Override
    public String template() {
        return "stamp";
    }

    @Override
    public String title(Words words) {
        return words.of("stamp.title", bottle.name());
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
