package org.lowfirst.web.rules;

import org.jspecify.annotations.Nullable;
import org.lowfirst.station.rules.RuleBookReading.Malformed;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * The text of the book, or of one rule of it, to be changed.
 *
 * @param place the bench
 * @param rule id of the rule; empty for the whole book
 * @param wrong the first line that does not read, with its number in the text shown; null when all does
 * @param form what was typed
 * @param key key of the form
 */
public record RuleTextPage(
        Place place, String rule, @Nullable Malformed wrong, Form form, String key) implements Page {

    public boolean whole() {
        return rule.isEmpty();
    }

    /** The line itself with a mark under the place, for a fixed-width font. */
    public String marked() {
        return wrong == null ? "" : wrong.text() + "\n" + " ".repeat(Math.max(0, wrong.column() - 1)) + "^";
    }

    @Override
    public String template() {
        return "rule-text";
    }

    @Override
    public String title(Words words) {
        return whole() ? words.of("rules.edit.title") : words.of("rules.one.title", rule);
    }

    @Override
    public Section section() {
        return Section.BENCH;
    }

    @Override
    public Place at() {
        return place;
    }
}
