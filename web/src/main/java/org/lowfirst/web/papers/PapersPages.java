package org.lowfirst.web.papers;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.paper.PaperSize;
import org.lowfirst.station.LocalHelp;
import org.lowfirst.station.RuleSet;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.papers.PapersPage.Line;
import org.lowfirst.web.papers.PapersPage.Size;
import org.lowfirst.web.view.Redirects;
import org.lowfirst.web.workplace.Answers;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Sender;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;

/** Offers what can be printed and keeps what the emergency card says. */
@Controller
public final class PapersPages {

    private static final List<String> PAPERS = List.of("bench-sheet", "supply-labels", "blank-log", "emergency-card");

    private static final int ROWS = 6;

    private final Workplace workplace;

    public PapersPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/papers")
    View show(@PathVariable String bench, @RequestParam(defaultValue = "") String bottle, HttpServletRequest request) {
        BenchNow now = workplace.open(bench);
        Form form = filled(now, proposed(now, request)).filled("bottle", bottle);
        return workplace.screens().show(page(workplace, now, form));
    }

    @PostMapping("/at/{bench}/papers")
    View set(@PathVariable String bench, @RequestParam Map<String, String> typed, HttpServletRequest request) {
        BenchNow now = workplace.open(bench);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        List<LocalHelp.Contact> contacts = contacts(reader, now);
        reader.required(Sender.WHO, "fault.who");
        Form form = reader.form().filled("base", proposed(now, request));
        if (!form.sound()) {
            return workplace.screens().refused(page(workplace, now, form));
        }
        Sender sender = Sender.of(typed);
        LocalHelp help = new LocalHelp(reader.text("place"), reader.text("meet"), contacts);
        Recording recording = workplace.benches().keepingLocalHelp().set(now.id(), help, sender.submission());
        String fault = workplace.fault(recording);
        return fault.isEmpty()
                ? Redirects.saved(
                        now.place().path("/papers"), Answers.entry(recording).orElse(0L), sender.who())
                : workplace.screens().refused(page(workplace, now, form.faulting("form", fault)));
    }

    /** The address that goes into the codes from now on. */
    @PostMapping("/at/{bench}/papers/address")
    View address(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        String base = reader.text("base");
        Optional<BottleAddresses> read = BottleAddresses.read(base);
        if (read.isEmpty()) {
            reader.fault("base", now.words().of("fault.base", base));
        }
        reader.required(Sender.WHO, "fault.who");
        Form form =
                filled(now, base).filled(Sender.WHO, reader.text(Sender.WHO)).withFaultsOf(reader.form());
        if (read.isEmpty() || !form.sound()) {
            return workplace.screens().refused(page(workplace, now, form));
        }
        Sender sender = Sender.of(typed);
        Recording recording = workplace
                .benches()
                .keepingLocalHelp()
                .reachAt(now.id(), read.get().base(), sender.submission());
        String fault = workplace.fault(recording);
        return fault.isEmpty()
                ? Redirects.saved(
                        now.place().path("/papers"), Answers.entry(recording).orElse(0L), sender.who())
                : workplace.screens().refused(page(workplace, now, form.faulting("form", fault)));
    }

    private static List<LocalHelp.Contact> contacts(Reader reader, BenchNow now) {
        List<LocalHelp.Contact> contacts = new ArrayList<>();
        for (int row = 1; row <= ROWS; row++) {
            String who = reader.text("who" + row);
            String dial = reader.text("dial" + row);
            if (who.isEmpty() != dial.isEmpty()) {
                String missing = who.isEmpty() ? "who" : "dial";
                reader.fault(missing + row, now.words().of("papers.help.missing." + missing));
            } else if (!who.isEmpty()) {
                contacts.add(new LocalHelp.Contact(who, dial));
            }
        }
        return contacts;
    }

    /** Size of paper usual where the rules of the bench come from. */
    static PaperSize usual(BenchNow now) {
        return now.bench().settings().rules() == RuleSet.US ? PaperSize.LETTER : PaperSize.A4;
    }

    static Form filled(BenchNow now, String base) {
        LocalHelp help = now.bench().areas().care().help();
        Map<String, String> fields = new HashMap<>();
        fields.put("base", base);
        fields.put("place", help.place());
        fields.put("meet", help.meetingPoint());
        for (int i = 0; i < help.numbers().size(); i++) {
            fields.put("who" + (i + 1), help.numbers().get(i).who());
            fields.put("dial" + (i + 1), help.numbers().get(i).dial());
        }
        return Form.with(fields);
    }

    static PapersPage page(Workplace workplace, BenchNow now, Form form) {
        List<Line> lines = PAPERS.stream()
                .map(paper -> new Line(
                        paper, now.words().of("papers." + paper), now.words().of("papers." + paper + ".what")))
                .toList();
        int entered = now.bench().areas().care().help().numbers().size();
        return new PapersPage(
                now.place(),
                lines,
                sizes(now),
                now.bench().listBottles().stream()
                        .filter(bottle -> bottle.id().value().equals(form.value("bottle")))
                        .map(bottle -> bottle.details().name())
                        .findFirst()
                        .orElse(""),
                IntStream.rangeClosed(1, Math.max(ROWS, entered)).boxed().toList(),
                form,
                workplace.ids().next());
    }

    private static List<Size> sizes(BenchNow now) {
        PaperSize usual = usual(now);
        return Arrays.stream(PaperSize.values())
                .sorted(Comparator.comparing(size -> size != usual))
                .map(size -> new Size(size.name().toLowerCase(Locale.ROOT), size.label()))
                .toList();
    }

    /** The address that was kept, or else the one this program was asked under. */
    private static String proposed(BenchNow now, HttpServletRequest request) {
        String kept = now.bench().areas().care().address();
        return !kept.isEmpty() ? kept : request.getScheme() + "://" + request.getHeader("Host");
    }
}
