package org.lowfirst.web.money;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.web.verdict.VerdictBadge;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * The accounts of one month.
 *
 * @param month as in an address, e.g. "2026-06"
 * @param monthName as people say it
 * @param months to choose from, latest first
 * @param people one line for each person with lines
 * @param total exact sum of all lines
 * @param gas all gas charged, by unit
 * @param result income, costs and what is left
 * @param bank what left the bank against what was charged; null when nothing was charged
 * @param uncharged fills without a line, and why
 * @param closed who closed the month and when; empty while it is open
 * @param closeLink where it is closed; empty when that cannot be yet
 * @param priced whether any prices were ever set
 * @param head hash at the head of the chain
 * @param entries number of the entry there
 */
public record StatementsPage(
        Place place,
        String month,
        String monthName,
        List<Choice> months,
        List<PersonLine> people,
        String total,
        String gas,
        List<Figure> result,
        @Nullable BankLine bank,
        List<UnchargedLine> uncharged,
        String closed,
        String closeLink,
        boolean priced,
        String head,
        long entries)
        implements Page {

    public StatementsPage {
        months = List.copyOf(months);
        people = List.copyOf(people);
        result = List.copyOf(result);
        uncharged = List.copyOf(uncharged);
    }

    /** A month to choose. */
    public record Choice(String value, String label) {}

    public record PersonLine(String name, String link, String lines, String gas, String total) {}

    /** @param strong whether it is the one to read first */
    public record Figure(String what, String amount, boolean strong) {}

    /**
     * @param badge the verdict; null when there is nothing to compare
     * @param charged gas charged for the fills of the month
     * @param sentence the numbers, or what is missing to compare
     */
    public record BankLine(@Nullable VerdictBadge badge, String charged, String sentence) {}

    /** @param link where something can be done about it; empty when nowhere */
    public record UnchargedLine(String what, String why, String link) {}

    /** The same month as a table for a spreadsheet. */
    public String csv() {
        return place.path("/statements/csv?month=" + month);
    }

    @Override
    public String template() {
        return "statements";
    }

    @Override
    public String title(Words words) {
        return words.of("statements.title", monthName);
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
