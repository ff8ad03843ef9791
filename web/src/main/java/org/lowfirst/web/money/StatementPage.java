package org.lowfirst.web.money;

import java.util.List;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * What one person owes for one month, line by line.
 *
 * @param month as in an address
 * @param monthName as people say it
 * @param query what tells this statement from others, for addresses below
 * @param lines in the order booked
 * @param total exact sum of the lines
 * @param closed who closed the month and when; empty while it is open
 * @param head hash at the head of the chain
 * @param entries number of the entry there
 */
public record StatementPage(
        Place place,
        String person,
        String month,
        String monthName,
        String query,
        List<Line> lines,
        String total,
        String closed,
        String head,
        long entries)
        implements Page {

    public StatementPage {
        lines = List.copyOf(lines);
    }

    /**
     * @param takesBack whether it is a reversal
     * @param what the bottle, and what the line is unless it is a plain fill
     * @param note why it was corrected, or that it was booked late; empty for nothing
     * @param entry number of the journal entry it came with
     * @param payerLink where somebody else is made to pay; empty for lines that no longer stand
     */
    public record Line(
            String day,
            boolean takesBack,
            String what,
            String working,
            String note,
            String amount,
            long entry,
            String payerLink) {}

    @Override
    public String template() {
        return "statement";
    }

    @Override
    public String title(Words words) {
        return words.of("statement.title", person, monthName);
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
