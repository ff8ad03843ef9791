package org.lowfirst.web.journal;

import java.util.List;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * A stretch of the journal, newest first.
 *
 * @param place the bench
 * @param entries the entries shown
 * @param count entries in all
 * @param head hash of the newest entry; empty while there is none
 * @param newer address of the stretch before; empty when there is none
 * @param older address of the stretch after; empty when there is none
 * @param search what is looked for, and what can be
 * @param people who entered how much of what was looked for; empty unless something is looked for
 */
public record JournalPage(
        Place place,
        List<Line> entries,
        long count,
        String head,
        String newer,
        String older,
        Search search,
        List<Counts> people)
        implements Page {

    public JournalPage {
        entries = List.copyOf(entries);
        people = List.copyOf(people);
    }

    /**
     * @param seq its number
     * @param when time it happened
     * @param who who entered it
     * @param what what happened, in words
     * @param note something to know about it; empty for nothing
     * @param signers who signed it; empty for nobody
     * @param corrected number of the entry that corrects it; 0 when it stands
     */
    public record Line(long seq, String when, String who, String what, String note, String signers, long corrected) {}

    /**
     * @param form what was typed
     * @param active whether anything is looked for
     * @param groups what entries are about
     * @param authors who entered them
     * @param cylinders bottles and supplies
     */
    public record Search(Form form, boolean active, List<Choice> groups, List<String> authors, List<Choice> cylinders) {

        public Search {
            groups = List.copyOf(groups);
            authors = List.copyOf(authors);
            cylinders = List.copyOf(cylinders);
        }
    }

    /** @param value as it is sent */
    public record Choice(String value, String label) {}

    /** @param what how many entries of what, e.g. "Fills 12, Readings 3" */
    public record Counts(String who, String what) {}

    @Override
    public String template() {
        return "journal";
    }

    @Override
    public String title(Words words) {
        return words.of("journal.title");
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
