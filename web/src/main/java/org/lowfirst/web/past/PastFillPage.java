package org.lowfirst.web.past;

import java.util.List;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * A whole fill entered afterwards: which bottle, when, before and after, and the stages as far as they are known.
 *
 * @param place the bench
 * @param bottles every bottle, those in use first
 * @param supplies the supplies in the order they are usually opened; one stage can be entered for each
 * @param banks names of the banks, the one without a name first
 * @param unit symbol of the unit of pressure
 * @param temperatureUnit symbol of the unit of temperature
 * @param usual the temperature that stands in when none is typed
 * @param form what was typed
 * @param key key of the form
 */
public record PastFillPage(
        Place place,
        List<Choice> bottles,
        List<Choice> supplies,
        List<String> banks,
        String unit,
        String temperatureUnit,
        String usual,
        Form form,
        String key)
        implements Page {

    public PastFillPage {
        bottles = List.copyOf(bottles);
        supplies = List.copyOf(supplies);
        banks = List.copyOf(banks);
    }

    /**
     * @param value value of the field
     * @param label in words
     */
    public record Choice(String value, String label) {}

    /** Whether anything was typed for the stages, or is wrong with them. */
    public boolean staged() {
        for (int row = 0; row < supplies.size(); row++) {
            if (!form.value("stage-bottle-" + row).isEmpty()
                    || !form.value("stage-left-" + row).isEmpty()) {
                return true;
            }
        }
        return false;
    }

    @Override
    public String template() {
        return "past-fill";
    }

    @Override
    public String title(Words words) {
        return words.of("past.title");
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
