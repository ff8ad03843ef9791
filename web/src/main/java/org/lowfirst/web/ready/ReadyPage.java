package org.lowfirst.web.ready;

import gg.jte.Content;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * The check of a shift: every bottle in service, what to do with it, which spare to take instead.
 *
 * @param place the bench
 * @param shift when the shift began, in words; empty while none has
 * @param next the bottle to read next; null when all are read
 * @param groups by priority
 * @param spares spares to fill, or to read
 * @param form what was typed
 * @param key key of the forms
 */
public record ReadyPage(
        Place place,
        String shift,
        @Nullable Next next,
        List<GroupPart> groups,
        List<Line> spares,
        Form form,
        String key)
        implements Page {

    public ReadyPage {
        groups = List.copyOf(groups);
        spares = List.copyOf(spares);
    }

    /** @param left how many are still to be read */
    public record Next(String name, String link, int left) {}

    /**
     * @param limits floor and wish, in words
     * @param ready how many of those in service are ready, in words
     */
    public record GroupPart(String name, String limits, String ready, List<Line> lines) {

        public GroupPart {
            lines = List.copyOf(lines);
        }
    }

    /**
     * @param id id of the bottle
     * @param mark shape for the eye
     * @param state what to do, in words
     * @param reading what it read last with its unit; empty when nobody read it
     * @param age when that was
     * @param picture level, floor and wish
     * @param read address where its gauge is entered
     * @param swap the spare to take instead; null for none
     * @param noSpare whether one is needed and none is there
     */
    public record Line(
            String id,
            String name,
            Content mark,
            String state,
            String reading,
            String age,
            Content picture,
            String read,
            @Nullable Swap swap,
            boolean noSpare) {}

    /** A spare that holds the wish. */
    public record Swap(String id, String name) {}

    @Override
    public String template() {
        return "ready";
    }

    @Override
    public String title(Words words) {
        return words.of("ready.title");
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
