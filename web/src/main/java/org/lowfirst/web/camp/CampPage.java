package org.lowfirst.web.camp;

import gg.jte.Content;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.kept.KeepPart;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * Supplies for a trip or camp.
 *
 * @param place the bench
 * @param form what was typed
 * @param unit unit of pressure
 * @param temperatureUnit unit of temperature
 * @param sheet what came of it; null when there is nothing
 * @param keep the offer to keep what was typed; null when there is nothing to keep
 */
public record CampPage(
        Place place,
        Form form,
        String unit,
        String temperatureUnit,
        @Nullable CampSheet sheet,
        @Nullable KeepPart keep) implements Page {

    /**
     * @param found whether a number of supplies is enough
     * @param advice how many to take, as sentences
     * @param picture the chance that every bottle can be finished, by number of supplies; {@code options} say the same
     * @param options each number of supplies
     */
    public record CampSheet(boolean found, String advice, Content picture, List<OptionLine> options) {

        public CampSheet {
            options = List.copyOf(options);
        }
    }

    /** One number of supplies. */
    public record OptionLine(String supplies, String gas, String fills, String days, String chance) {}

    @Override
    public String template() {
        return "camp";
    }

    @Override
    public String title(Words words) {
        return words.of("camp.title");
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
