package org.lowfirst.web.study;

import gg.jte.Content;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.web.kept.KeepPart;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * A study under way or done.
 *
 * @param place the bench
 * @param address its own address
 * @param change address of the form with what was typed
 * @param progress how far it is; empty when it is done
 * @param percent the same as a number from 0 to 100
 * @param sheet what came of it; null while it is under way, and when it was stopped too early
 * @param keep the offer to keep what was typed; null when there is nothing to keep
 */
public record StudyResultPage(
        Place place,
        String address,
        String change,
        String progress,
        int percent,
        @Nullable StudySheet sheet,
        @Nullable KeepPart keep)
        implements Page {

    /**
     * @param cheapest what is cheapest
     * @param extent how much was simulated
     * @param cost cost per fill against bank size; {@code lines} say the same
     * @param residual what supplies read when they leave
     * @param fills fills made with one supply
     * @param lines every alternative
     * @param breakEvens where another becomes as cheap
     * @param notes what makes a cost per fill say less than it seems to
     */
    public record StudySheet(
            String cheapest,
            String extent,
            Content cost,
            Content residual,
            Content fills,
            List<AlternativeLine> lines,
            List<String> breakEvens,
            List<String> notes) {

        public StudySheet {
            lines = List.copyOf(lines);
            breakEvens = List.copyOf(breakEvens);
            notes = List.copyOf(notes);
        }
    }

    /** One alternative. */
    public record AlternativeLine(
            String name,
            boolean cheapest,
            String cost,
            String interval,
            String spread,
            String parts,
            String fills,
            String back,
            String storage,
            String limit) {}

    @Override
    public String template() {
        return "study-result";
    }

    @Override
    public String title(Words words) {
        return words.of("study.title");
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
