package org.lowfirst.web.journal;

import java.util.List;
import java.util.regex.Pattern;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * One entry in full, and the form that corrects it.
 *
 * @param place the bench
 * @param line what the journal shows of it
 * @param recorded when the journal took it
 * @param kind written name of its kind
 * @param hash its hash
 * @param fields what can be given anew; empty when it can only be reversed
 * @param form what was typed
 * @param key key of the form
 */
public record EntryPage(
        Place place,
        JournalPage.Line line,
        String recorded,
        String kind,
        String hash,
        List<Field> fields,
        Form form,
        String key)
        implements Page {

    /** Kinds of the entries that tell a fill, of which a record can be printed. */
    private static final Pattern OF_A_FILL =
            Pattern.compile("fill\\.(started|finished|abandoned|recorded)|stage\\.recorded");

    public EntryPage {
        fields = List.copyOf(fields);
    }

    /**
     * A value that can be given anew.
     *
     * @param name name of the field
     * @param label what it is, with its unit
     */
    public record Field(String name, String label) {}

    /** Whether the fill it is about can be printed. */
    public boolean ofAFill() {
        return OF_A_FILL.matcher(kind).matches() && line.corrected() == 0;
    }

    @Override
    public String template() {
        return "entry";
    }

    @Override
    public String title(Words words) {
        return words.of("entry.title", line.seq());
    }

    @Override
    public Section section() {
        return Section.JOURNAL;
    }

    @Override
    public Place at() {
        return place;
    }
}
