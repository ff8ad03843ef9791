package org.lowfirst.web.start;

import java.util.List;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * What there is to begin with.
 *
 * @param benches the benches there are
 * @param demo whether the demo bench is among them
 */
public record StartPage(List<Line> benches, boolean demo) implements Page {

    public StartPage {
        benches = List.copyOf(benches);
    }

    /**
     * @param path its first page
     * @param name its name
     * @param entries how much is in its journal
     */
    public record Line(String path, String name, String entries) {}

    @Override
    public String template() {
        return "start";
    }

    @Override
    public String title(Words words) {
        return words.of(benches.isEmpty() ? "start.title" : "start.choose");
    }

    @Override
    public Section section() {
        return Section.BANK;
    }
}
