package org.lowfirst.web.journal;

import java.util.List;
import java.util.Map;
import org.lowfirst.app.bench.JournalFilter;
import org.lowfirst.app.bench.JournalLine;
import org.lowfirst.app.bench.SearchingTheJournal;
import org.lowfirst.app.bench.SearchingTheJournal.Found;
import org.lowfirst.app.journal.Verification;
import org.lowfirst.web.journal.JournalPage.Line;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;

/** Shows the journal, finds entries in it and checks its chain. */
@Controller
public final class JournalPages {

    private static final int STRETCH = 25;

    private final Workplace workplace;

    public JournalPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/journal")
    View list(
            @PathVariable String bench,
            @RequestParam(defaultValue = "0") int skip,
            @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        SearchingTheJournal searching = workplace.benches().searchingTheJournal();
        JournalSearch search = new JournalSearch(now, workplace.clock().getZone(), typed);
        JournalFilter filter = search.filter();
        int from = Math.max(0, skip);
        Found found = searching.find(now.id(), filter, from, STRETCH);
        long count = workplace.benches().readingTheJournal().count(now.id());
        boolean counted = !filter.isNone() && from == 0;
        return workplace
                .screens()
                .show(new JournalPage(
                        now.place(),
                        found.lines().stream().map(line -> line(line, now)).toList(),
                        count,
                        head(now, count),
                        from == 0 ? "" : search.address(filter.isNone() ? Math.max(0, from - STRETCH) : 0),
                        found.next() == 0 ? "" : search.address(found.next()),
                        search.offered(!filter.isNone()),
                        counted ? search.counts(searching.countByPerson(now.id(), filter)) : List.of()));
    }

    @GetMapping("/at/{bench}/journal/chain")
    View chain(@PathVariable String bench) {
        BenchNow now = workplace.open(bench);
        Verification verification = workplace.benches().searchingTheJournal().verify(now.id());
        return workplace.screens().show(ChainPage.of(now, verification));
    }

    private String head(BenchNow now, long count) {
        return count == 0
                ? ""
                : workplace
                        .benches()
                        .readingTheJournal()
                        .getLine(now.id(), count)
                        .hash();
    }

    static Line line(JournalLine line, BenchNow now) {
        return new Line(
                line.entry().seq(),
                now.times().full(line.entry().origin().effectiveAt()),
                line.entry().origin().author(),
                line.sentence(),
                line.note() == null ? "" : line.note(),
                line.signers().isEmpty() ? "" : now.words().of("signed", String.join(", ", line.signers())),
                line.correctedBy() == null ? 0 : line.correctedBy());
    }
}
