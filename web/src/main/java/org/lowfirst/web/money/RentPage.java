package org.lowfirst.web.money;

import java.util.List;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * Rent: what was agreed, what may be charged, and what the bills say.
 *
 * @param currency currency of the accounts; empty before anything was entered in one
 * @param agreed what was agreed, latest first
 * @param month name of the month the stays are counted in
 * @param stays what may be charged in it, by serial number
 * @param unnamed supplies whose serial number nobody read; empty for none
 * @param serials serial numbers to choose from
 * @param bills lines of bills and what the check says, latest first
 * @param over what was charged too much in all; empty for nothing
 * @param terms form of the terms
 * @param bill form of a bill's line
 * @param key key of the forms
 */
public record RentPage(
        Place place,
        String currency,
        List<String> agreed,
        String month,
        List<StayLine> stays,
        String unnamed,
        List<String> serials,
        List<BillLine> bills,
        String over,
        Form terms,
        Form bill,
        String key)
        implements Page {

    public RentPage {
        agreed = List.copyOf(agreed);
        stays = List.copyOf(stays);
        serials = List.copyOf(serials);
        bills = List.copyOf(bills);
    }

    /** @param days days of rent in the month, in words */
    public record StayLine(String serial, String stay, String days, String expected) {}

    /**
     * @param fine whether it may be charged as it is
     * @param verdict what the check says, one sentence for each thing wrong
     */
    public record BillLine(
            String bill, String what, String charged, String payable, boolean fine, List<String> verdict, long entry) {

        public BillLine {
            verdict = List.copyOf(verdict);
        }
    }

    @Override
    public String template() {
        return "rent";
    }

    @Override
    public String title(Words words) {
        return words.of("rent.title");
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
