package org.lowfirst.web.twoopen;

import java.util.List;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * What it meant that two valves were open together.
 *
 * @param place the bench
 * @param seq number of the entry
 * @param names the two supplies
 * @param unit symbol of the unit of pressure
 * @param level where they meet, without unit
 * @param lines the two with what they showed before and since
 * @param moved how much gas went over
 * @param cost what that costs; empty when there is no bottle to count with
 */
public record TwoOpenReportPage(
        Place place,
        long seq,
        String names,
        String unit,
        String level,
        List<Line> lines,
        String moved,
        List<String> cost)
        implements Page {

    public TwoOpenReportPage {
        lines = List.copyOf(lines);
        cost = List.copyOf(cost);
    }

    /**
     * @param name name of the supply
     * @param before what it should have shown just before
     * @param since what it should show since
     * @param how read or reckoned
     */
    public record Line(String name, String before, String since, String how) {}

    @Override
    public String template() {
        return "two-open-report";
    }

    @Override
    public String title(Words words) {
        return words.of("two-open.report.title", names);
    }

    @Override
    public Section section() {
        return Section.BANK;
    }

    @Override
    public Place at() {
        return place;
    }
}
