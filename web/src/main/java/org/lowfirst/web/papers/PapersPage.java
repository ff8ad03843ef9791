package org.lowfirst.web.papers;

import java.util.List;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * What can be printed, and what the emergency card says.
 *
 * @param papers those that need nothing said
 * @param sizes sizes of paper, the usual one first
 * @param bottleName name of the bottle whose tag alone is wanted; empty for all
 * @param rows numbers of the rows for local numbers, from 1
 * @param form what was typed
 * @param key key of the form
 */
public record PapersPage(
        Place place, List<Line> papers, List<Size> sizes, String bottleName, List<Integer> rows, Form form, String key)
        implements Page {

    public PapersPage {
        papers = List.copyOf(papers);
        sizes = List.copyOf(sizes);
        rows = List.copyOf(rows);
    }

    /**
     * @param path address below that of the papers
     * @param what what it is for
     */
    public record Line(String path, String name, String what) {}

    /** @param value as it is sent */
    public record Size(String value, String label) {}

    /** Address of a paper in a size. */
    public String address(Line line, Size size) {
        return place.path("/papers/" + line.path() + "?size=" + size.value());
    }

    @Override
    public String template() {
        return "papers";
    }

    @Override
    public String title(Words words) {
        return words.of("papers.title");
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
