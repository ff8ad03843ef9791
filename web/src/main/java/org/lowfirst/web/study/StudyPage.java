package org.lowfirst.web.study;

import java.util.Map;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * Asks what to compare.
 *
 * @param place the bench
 * @param form what was typed
 * @param unit unit of pressure
 * @param past what the journal says of the use
 * @param hints by field, where its number comes from
 * @param swing how the temperature is taken to go through the year
 * @param latest address of the latest study; empty when there is none
 * @param key makes sending twice one study
 */
public record StudyPage(
        Place place,
        Form form,
        String unit,
        String past,
        Map<String, String> hints,
        String swing,
        String latest,
        String key)
        implements Page {

    public StudyPage {
        hints = Map.copyOf(hints);
    }

    /** Where what stands in a field comes from; empty when somebody typed it. */
    public String hint(String field) {
        return hints.getOrDefault(field, "");
    }

    @Override
    public String template() {
        return "study";
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
