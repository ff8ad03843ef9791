package org.lowfirst.web.data;

import java.util.List;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * Everything out, journals in.
 *
 * @param tables what can be had as a table
 * @param told what came of the file that was sent; empty when none was
 * @param good whether the file was good
 * @param checked name under which the checked file can be imported; empty when there is none
 * @param fault what is wrong with the form; empty when nothing is
 * @param key key of the form
 */
public record DataPage(
        Place place, List<Line> tables, List<String> told, boolean good, String checked, String fault, String key)
        implements Page {

    public DataPage {
        tables = List.copyOf(tables);
        told = List.copyOf(told);
    }

    /** @param path address of the file below the bench's own */
    public record Line(String path, String name, String what) {}

    @Override
    public String template() {
        return "data";
    }

    @Override
    public String title(Words words) {
        return words.of("data.title");
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
