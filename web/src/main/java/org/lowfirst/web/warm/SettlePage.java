package org.lowfirst.web.warm;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * Where to stop a warm fill, and what the bottle settles to.
 *
 * @param place the bench
 * @param fill the fill it is asked for; null when somebody describes a bottle
 * @param bottles bottles to choose from; empty for a fill
 * @param unit symbols of the units
 * @param feels ways a bottle can feel
 * @param form what was typed
 * @param sheet what comes of it; null before anything was asked
 * @param key key of the form that keeps it
 */
public record SettlePage(
        Place place,
        @Nullable FillLine fill,
        List<BottleLine> bottles,
        UnitWords unit,
        List<FeelLine> feels,
        Form form,
        @Nullable SettleSheet sheet,
        String key)
        implements Page {

    public SettlePage {
        bottles = List.copyOf(bottles);
        feels = List.copyOf(feels);
    }

    /**
     * @param path address of this page
     * @param back address of the step it was asked at
     * @param at the step, for coming back
     * @param bottle name of the bottle
     */
    public record FillLine(String path, String back, String at, String bottle) {}

    /** A bottle to choose. */
    public record BottleLine(String id, String name) {}

    /** A way a bottle can feel. */
    public record FeelLine(String value, String name) {}

    /** Symbols of units, and the usual temperature of the bench. */
    public record UnitWords(String pressure, String temperature, String usual) {}

    /**
     * @param now whether to shut it now
     * @param stop where to shut the valve, without unit
     * @param settles what it settles to, without unit
     * @param full per cent of what it may hold
     * @param settledAfter how long until it counts as settled
     * @param sentences stop, settled reading, wait, top-up
     * @param permission what lets the stop rise above the marked pressure; empty when nothing does
     * @param assumed what was taken for granted
     * @param cautions to be shown with it
     */
    public record SettleSheet(
            boolean now,
            String stop,
            String settles,
            String full,
            String settledAfter,
            List<String> sentences,
            String permission,
            List<String> assumed,
            List<String> cautions) {

        public SettleSheet {
            sentences = List.copyOf(sentences);
            assumed = List.copyOf(assumed);
            cautions = List.copyOf(cautions);
        }
    }

    /** Whether it can be kept: for a bottle off the bench whose gas was measured or worked out, not felt. */
    public boolean keepable() {
        return fill == null && sheet != null && !form.value("gas").isBlank();
    }

    /** Where the form is sent. */
    public String action() {
        return fill == null ? place.path("/settle") : fill.path();
    }

    @Override
    public String template() {
        return "settle";
    }

    @Override
    public String title(Words words) {
        return fill == null ? words.of("settle.title") : words.of("settle.title.fill", fill.bottle());
    }

    @Override
    public Section section() {
        return fill == null ? Section.BENCH : Section.FILL;
    }

    @Override
    public boolean focused() {
        return fill != null;
    }

    @Override
    public Place at() {
        return place;
    }
}
