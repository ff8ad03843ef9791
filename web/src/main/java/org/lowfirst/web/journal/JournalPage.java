package org.lowfirst.web.journal;

import java.util.List;
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
 */
public record JournalPage(Place place, List<Line> entries, long count, String head, String newer, String older)
        implements Page {

    public JournalPage {
        entries = List.copyOf(entries);
    }

    /**
     * @param seq its number
     * @param when time it happened
     * @param who who entered it
     * @param what what happened, in words
     * @param note something to know about it; empty for nothing
     * @param signers who signed it, in words; empty when nobody did
     * @param corrected number of the entry that corrects it; 0 when it stands
     */
    public record Line(long seq, String when, String who, String what, String note, String signers, long corrected) {}

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
