package org.lowfirst.web.papers;

import java.util.Locale;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.lowfirst.app.paper.PaperSize;
import org.lowfirst.app.paper.PrintedPaper;
import org.lowfirst.app.paper.PrintingPapers;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.FillId;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Attachment;
import org.lowfirst.web.view.NoSuchThing;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;

/** The papers themselves, as PDF. */
@Controller
public final class PaperPages {

    private static final Pattern FILL = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,63}");

    private final Workplace workplace;

    public PaperPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/papers/supply-labels")
    View labels(@PathVariable String bench, @RequestParam(defaultValue = "") String size) {
        BenchNow now = workplace.open(bench);
        return shown(printing(now).supplyLabels(now.id(), size(size, now)));
    }

    /** @param base address of this program from another machine, as typed on the Papers page */
    @GetMapping("/at/{bench}/papers/bottle-tags")
    View tags(
            @PathVariable String bench,
            @RequestParam(defaultValue = "") String size,
            @RequestParam(defaultValue = "") String base,
            @RequestParam(defaultValue = "") String bottle) {
        BenchNow now = workplace.open(bench);
        Optional<BottleAddresses> addresses = BottleAddresses.read(base);
        if (addresses.isEmpty()) {
            Form form = PapersPages.filled(now, base)
                    .filled("bottle", bottle)
                    .faulting("base", now.words().of("fault.base", base));
            return workplace.screens().refused(PapersPages.page(workplace, now, form));
        }
        Function<BottleId, String> address = addresses.get().at(now.place());
        PaperSize paper = size(size, now);
        if (bottle.isEmpty()) {
            return shown(printing(now).bottleTags(now.id(), address, paper));
        }
        return now.bench().listBottles().stream()
                .map(known -> known.id())
                .filter(id -> id.value().equals(bottle))
                .findFirst()
                .flatMap(id -> printing(now).findBottleTag(now.id(), id, address, paper))
                .map(PaperPages::shown)
                .orElseThrow(() -> new NoSuchThing("bottle " + bottle));
    }

    @GetMapping("/at/{bench}/papers/bench-sheet")
    View sheet(@PathVariable String bench, @RequestParam(defaultValue = "") String size) {
        BenchNow now = workplace.open(bench);
        return shown(printing(now).benchSheet(now.id(), size(size, now)));
    }

    @GetMapping("/at/{bench}/papers/blank-log")
    View log(@PathVariable String bench, @RequestParam(defaultValue = "") String size) {
        BenchNow now = workplace.open(bench);
        return shown(printing(now).blankLog(now.id(), size(size, now)));
    }

    @GetMapping("/at/{bench}/papers/emergency-card")
    View card(@PathVariable String bench, @RequestParam(defaultValue = "") String size) {
        BenchNow now = workplace.open(bench);
        return shown(printing(now).emergencyCard(now.id(), size(size, now)));
    }

    /** @param entry number of any entry of the fill */
    @GetMapping("/at/{bench}/papers/fill-record")
    View record(@PathVariable String bench, @RequestParam long entry, @RequestParam(defaultValue = "") String size) {
        BenchNow now = workplace.open(bench);
        return record(now, entry, size(size, now))
                .map(PaperPages::shown)
                .orElseThrow(() -> new NoSuchThing("fill of entry " + entry));
    }

    /** @param fill id of the fill */
    @GetMapping("/at/{bench}/papers/record-of/{fill}")
    View recordOf(@PathVariable String bench, @PathVariable String fill, @RequestParam(defaultValue = "") String size) {
        BenchNow now = workplace.open(bench);
        if (!FILL.matcher(fill).matches()) {
            throw new NoSuchThing("fill " + fill);
        }
        return printing(now)
                .findFillRecord(now.id(), new FillId(fill), size(size, now))
                .map(PaperPages::shown)
                .orElseThrow(() -> new NoSuchThing("fill " + fill));
    }

    private Optional<PrintedPaper> record(BenchNow now, long entry, PaperSize size) {
        try {
            return printing(now).findFillRecord(now.id(), entry, size);
        } catch (NoSuchElementException none) {
            throw new NoSuchThing("entry " + entry);
        }
    }

    private PrintingPapers printing(BenchNow now) {
        Locale locale = Locale.forLanguageTag(now.words().language());
        return new PrintingPapers(workplace.benches(), workplace.clock(), locale);
    }

    private static View shown(PrintedPaper paper) {
        return Attachment.shown("application/pdf", paper.fileName(), paper.pdf());
    }

    private static PaperSize size(String asked, BenchNow now) {
        for (PaperSize size : PaperSize.values()) {
            if (size.name().equalsIgnoreCase(asked)) {
                return size;
            }
        }
        return PapersPages.usual(now);
    }
}
