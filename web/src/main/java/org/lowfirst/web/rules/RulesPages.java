package org.lowfirst.web.rules;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.KeepingRules;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.station.Entry;
import org.lowfirst.station.rules.RuleBook;
import org.lowfirst.station.rules.RuleBookReading;
import org.lowfirst.station.rules.RuleBookReading.Malformed;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.rules.RulesPage.Standing;
import org.lowfirst.web.rules.RulesPage.Version;
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

/** Shows the rule book of a bench and changes it, whole or rule by rule. */
@Controller
public final class RulesPages {

    private static final String TEXT = "text";
    private static final String RULE = "rule";

    private final Workplace workplace;

    public RulesPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/rules")
    View show(@PathVariable String bench) {
        BenchNow now = workplace.open(bench);
        return workplace.screens().show(page(now, Form.blank()));
    }

    @GetMapping("/at/{bench}/rules/version")
    View version(@PathVariable String bench, @RequestParam String entry) {
        BenchNow now = workplace.open(bench);
        String text = Optional.of(entry)
                .filter(number -> number.matches("\\d{1,12}"))
                .flatMap(number -> keeping().findVersion(now.id(), Long.parseLong(number)))
                .orElseThrow(() -> new NoSuchThing("rule book of entry " + entry));
        RuleBook book = keeping().read(text) instanceof RuleBookReading.Read read ? read.book() : null;
        return workplace
                .screens()
                .show(new RulesPage(
                        now.place(),
                        book == null ? "" : book.title(),
                        Standing.EARLIER,
                        book == null ? List.of() : keeping().inWords(now.id(), book),
                        List.of(),
                        text,
                        Form.blank(),
                        workplace.ids().next()));
    }

    @GetMapping("/at/{bench}/rules/edit")
    View edit(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        String rule = typed.getOrDefault(RULE, "");
        String text =
                rule.isEmpty() ? keeping().text(now.id()) : block(now, rule).lines();
        return workplace.screens().show(editing(now, rule, null, Form.with(Map.of(TEXT, text))));
    }

    @PostMapping("/at/{bench}/rules/edit")
    View change(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        String rule = typed.getOrDefault(RULE, "");
        Reader reader = reader(now, typed);
        String typedText = typed.getOrDefault(TEXT, "").replace("\r\n", "\n");
        int before = 0;
        String whole = typedText;
        if (!rule.isEmpty()) {
            Block block = block(now, rule);
            boolean out = typed.containsKey("take-out");
            whole = block.before() + (out ? "" : typedText.strip() + "\n") + block.after();
            before = (int) block.before().lines().count();
        }
        if (keeping().read(whole) instanceof Malformed wrong) {
            reader.fault(TEXT, keeping().inWords(wrong));
            return workplace.screens().refused(editing(now, rule, at(wrong, before), reader.form()));
        }
        if (!reader.form().sound()) {
            return workplace.screens().refused(editing(now, rule, null, reader.form()));
        }
        Sender sender = Sender.of(typed);
        Recording recording = keeping().adopt(now.id(), whole, sender.submission());
        String fault = workplace.fault(recording);
        return fault.isEmpty()
                ? saved(now, recording, sender)
                : workplace
                        .screens()
                        .refused(editing(now, rule, null, reader.form().faulting(Sender.WHO, fault)));
    }

    @PostMapping("/at/{bench}/rules/built-in")
    View back(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Reader reader = reader(now, typed);
        if (!reader.form().sound()) {
            return workplace.screens().refused(page(now, reader.form()));
        }
        Sender sender = Sender.of(typed);
        Recording recording = keeping().adopt(now.id(), keeping().builtInText(now.id()), sender.submission());
        String fault = workplace.fault(recording);
        return fault.isEmpty()
                ? saved(now, recording, sender)
                : workplace.screens().refused(page(now, reader.form().faulting(Sender.WHO, fault)));
    }

    private static View saved(BenchNow now, Recording recording, Sender sender) {
        return Redirects.saved(
                now.place().path("/rules"), Answers.entry(recording).orElse(0L), sender.who());
    }

    private static Reader reader(BenchNow now, Map<String, String> typed) {
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        reader.required(Sender.WHO, "fault.who");
        if (!Sender.of(typed).hasKey()) {
            reader.fault("form", now.words().of("fault.key"));
        }
        return reader;
    }

    /** The same place, counted in the lines of the text shown. */
    private static Malformed at(Malformed wrong, int before) {
        return new Malformed(
                wrong.file(), Math.max(1, wrong.line() - before), wrong.column(), wrong.problem(), wrong.text());
    }

    /** One rule in the text of the book, and what stands around it. */
    private record Block(String before, String lines, String after) {}

    private Block block(BenchNow now, String rule) {
        String text = keeping().text(now.id());
        String head = "[" + rule + "]\n";
        int from = text.startsWith(head) ? 0 : text.indexOf("\n" + head) + 1;
        if (from == 0 && !text.startsWith(head)) {
            throw new NoSuchThing("rule " + rule);
        }
        int next = text.indexOf("\n[", from);
        int end = next < 0 ? text.length() : next + 1;
        return new Block(text.substring(0, from), text.substring(from, end).strip() + "\n", "\n" + text.substring(end));
    }

    private RulesPage page(BenchNow now, Form form) {
        RuleBook book = keeping().book(now.id());
        return new RulesPage(
                now.place(),
                book.title(),
                keeping().isBuiltIn(now.id()) ? Standing.BUILT_IN : Standing.ADOPTED,
                keeping().inWords(now.id(), book),
                keeping().listVersions(now.id()).stream()
                        .map(entry -> version(entry, now))
                        .toList(),
                "",
                form,
                workplace.ids().next());
    }

    private static Version version(Entry entry, BenchNow now) {
        return new Version(
                entry.seq(),
                now.times().full(entry.origin().effectiveAt()),
                entry.origin().author());
    }

    private RuleTextPage editing(BenchNow now, String rule, @Nullable Malformed wrong, Form form) {
        return new RuleTextPage(now.place(), rule, wrong, form, workplace.ids().next());
    }

    private KeepingRules keeping() {
        return workplace.benches().keepingRules();
    }
}
