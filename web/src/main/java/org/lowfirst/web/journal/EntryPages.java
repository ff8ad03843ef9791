package org.lowfirst.web.journal;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.CorrectingAnEntry;
import org.lowfirst.app.bench.JournalLine;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.bench.Submission;
import org.lowfirst.station.Fact;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.journal.EntryPage.Field;
import org.lowfirst.web.view.NoSuchThing;
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

/** Shows one entry and corrects it by a counter-entry. */
@Controller
public final class EntryPages {

    private final Workplace workplace;

    public EntryPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/journal/{seq}")
    View show(@PathVariable String bench, @PathVariable long seq) {
        BenchNow now = workplace.open(bench);
        JournalLine line = line(now, seq);
        return workplace.screens().show(page(now, line, filled(now, line)));
    }

    @PostMapping("/at/{bench}/journal/{seq}")
    View correct(@PathVariable String bench, @PathVariable long seq, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        JournalLine line = line(now, seq);
        Fact fact = line.entry().fact();
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        boolean reverse = typed.containsKey("reverse");
        Map<String, StatedPressure> anew = reverse ? Map.of() : anew(reader, fact);
        String reason = reader.required("reason", "fault.reason");
        reader.required(Sender.WHO, "fault.who");
        if (!reverse && reader.form().sound() && anew.equals(Correctable.of(fact))) {
            reader.fault(anew.keySet().iterator().next(), now.words().of("entry.same"));
        }
        if (!reader.form().sound()) {
            return workplace.screens().refused(page(now, line, reader.form()));
        }
        Sender sender = Sender.of(typed);
        CorrectingAnEntry correcting = workplace.benches().correctingAnEntry();
        Recording recording = reverse
                ? correcting.reverse(now.id(), seq, reason, sender.submission())
                : correcting.replace(now.id(), seq, reason, Correctable.with(fact, anew), sender.submission());
        String fault = workplace.fault(recording);
        if (!fault.isEmpty()) {
            Form form = reader.form().faulting("form", fault);
            return workplace
                    .screens()
                    .refused(page(
                            now, line, Answers.confirmable(recording) ? form.filled(Form.CONFIRMABLE, "yes") : form));
        }
        return Redirects.saved(
                now.place().path("/journal"), Answers.entry(recording).orElse(0L), sender.who());
    }

    @PostMapping("/at/{bench}/journal/{seq}/sign")
    View sign(@PathVariable String bench, @PathVariable long seq, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        JournalLine line = line(now, seq);
        String signer = typed.getOrDefault("signer", "").strip();
        Form form = filled(now, line).filled("signer", signer);
        Sender sender = Sender.of(typed);
        if (signer.isEmpty() || !sender.hasKey()) {
            String key = signer.isEmpty() ? "fault.who" : "fault.key";
            return workplace
                    .screens()
                    .refused(page(now, line, form.faulting("signer", now.words().of(key))));
        }
        Submission signed = new Sender(signer, sender.key(), false).submission();
        Recording recording = workplace.benches().keepingPeople().sign(now.id(), seq, signed);
        String fault = workplace.fault(recording);
        return fault.isEmpty()
                ? Redirects.saved(
                        now.place().path("/journal/" + seq),
                        Answers.entry(recording).orElse(0L),
                        "")
                : workplace.screens().refused(page(now, line, form.faulting("signer", fault)));
    }

    private static Form filled(BenchNow now, JournalLine line) {
        Map<String, String> fields = new HashMap<>();
        Correctable.of(line.entry().fact())
                .forEach((name, pressure) -> fields.put(name, now.figures().toType(pressure)));
        return Form.with(fields);
    }

    private static Map<String, StatedPressure> anew(Reader reader, Fact fact) {
        Map<String, StatedPressure> anew = new LinkedHashMap<>();
        for (String name : Correctable.of(fact).keySet()) {
            @Nullable StatedPressure pressure = reader.pressure(name);
            if (pressure != null) {
                anew.put(name, pressure);
            }
        }
        return anew;
    }

    private EntryPage page(BenchNow now, JournalLine line, Form form) {
        List<Field> fields = line.correctedBy() != null
                ? List.of()
                : Correctable.of(line.entry().fact()).keySet().stream()
                        .map(name -> new Field(
                                name,
                                now.words()
                                        .of("entry.field." + name, now.figures().pressureUnit())))
                        .toList();
        return new EntryPage(
                now.place(),
                JournalPages.line(line, now),
                now.times().full(line.entry().origin().recordedAt()),
                line.kind(),
                line.hash(),
                fields,
                form,
                workplace.ids().next());
    }

    private JournalLine line(BenchNow now, long seq) {
        try {
            return workplace.benches().readingTheJournal().getLine(now.id(), seq);
        } catch (NoSuchElementException none) {
            throw new NoSuchThing("entry " + seq);
        }
    }
}
