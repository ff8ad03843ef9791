package org.lowfirst.web.journal;

import java.util.List;
import org.lowfirst.app.bench.JournalLine;
import org.lowfirst.app.bench.ReadingTheJournal;
import org.lowfirst.web.journal.JournalPage.Line;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;

/** Shows the journal. */
@Controller
public final class JournalPages {

    private static final int STRETCH = 25;

    private final Workplace workplace;

    public JournalPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/journal")
    View list(@PathVariable String bench, @RequestParam(defaultValue = "0") int skip) {
        BenchNow now = workplace.open(bench);
        ReadingTheJournal journal = workplace.benches().readingTheJournal();
        int from = Math.max(0, skip);
        long count = journal.count(now.id());
        List<JournalLine> lines = journal.listLines(now.id(), from, STRETCH);
        String head = count == 0 ? "" : journal.getLine(now.id(), count).hash();
        String path = now.place().path("/journal");
        return workplace
                .screens()
                .show(new JournalPage(
                        now.place(),
                        lines.stream().map(line -> line(line, now)).toList(),
                        count,
                        head,
                        from == 0 ? "" : path + "?skip=" + Math.max(0, from - STRETCH),
                        from + STRETCH >= count ? "" : path + "?skip=" + (from + STRETCH)));
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
