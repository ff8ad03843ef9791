package org.lowfirst.web.rules;

import java.util.List;
import org.lowfirst.app.fitness.RuleInWords;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * A rule book in words.
 *
 * @param place the bench
 * @param title of the book
 * @param standing which book this is: in force, built in, or an earlier version
 * @param rules in the order they are judged
 * @param versions the versions in the journal, newest first; empty on an earlier version
 * @param text the book as text, on an earlier version; empty otherwise
 * @param form what was typed
 * @param key key of the form
 */
public record RulesPage(
        Place place,
        String title,
        Standing standing,
        List<RuleInWords> rules,
        List<Version> versions,
        String text,
        Form form,
        String key)
        implements Page {

    public RulesPage {
        rules = List.copyOf(rules);
        versions = List.copyOf(versions);
    }

    /** Which book is shown. */
    public enum Standing {
        BUILT_IN,
        ADOPTED,
        EARLIER
    }

    /**
     * @param seq number of its entry
     * @param when when it was adopted
     * @param who by whom
     */
    public record Version(long seq, String when, String who) {}

    public boolean inForce() {
        return standing != Standing.EARLIER;
    }

    @Override
    public String template() {
        return "rules";
    }

    @Override
    public String title(Words words) {
        return words.of("rules.title");
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
