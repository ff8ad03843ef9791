package org.lowfirst.web.kept;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.station.OutlookFact;
import org.lowfirst.station.Rule;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.kept.KeptPage.EventLine;
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

/** Keeps what the bench looks ahead with: figures, planned events, and that supplies were ordered. */
@Controller
public final class KeptPages {

    private static final Pattern BACK =
            Pattern.compile("/(forecast|send-back|camp|study(/[A-Za-z0-9._-]+)?)(\\?[A-Za-z0-9=&%._+*-]*)?");

    private final Workplace workplace;

    public KeptPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/kept")
    View show(@PathVariable String bench) {
        BenchNow now = workplace.open(bench);
        return workplace.screens().show(page(now, KeptFields.figures(defaults(now)), Form.blank(), ""));
    }

    @PostMapping("/at/{bench}/kept")
    View keep(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Reader reader = reader(now, typed);
        OutlookFact.@Nullable FiguresKept fact = KeptFields.read(reader, now, defaults(now));
        Form form = entered(now, fact, reader, typed, Map.of());
        String back = BACK.matcher(reader.text("back")).matches() ? reader.text("back") : "";
        return form.sound()
                ? Redirects.saved(now.place().path(back.isEmpty() ? "/kept" : back), saved(form), who(typed))
                : workplace.screens().refused(page(now, withKept(now, form), Form.blank(), back));
    }

    @PostMapping("/at/{bench}/kept/event")
    View plan(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Reader reader = reader(now, typed);
        OutlookFact.@Nullable HappeningPlanned fact = KeptFields.planned(reader, now);
        Form form = entered(now, fact, reader, typed, Map.of(Rule.DAY_OUT_OF_RANGE, "from", Rule.NAME_EMPTY, "name"));
        return answer(now, form, typed);
    }

    @PostMapping("/at/{bench}/kept/event/drop")
    View drop(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Reader reader = reader(now, typed);
        @Nullable LocalDate from = reader.dayIfTyped("from");
        Form form = entered(
                now,
                from == null ? null : new OutlookFact.HappeningDropped(reader.text("name"), from),
                reader,
                typed,
                Map.of());
        return form.sound()
                ? answer(now, form, typed)
                : workplace
                        .screens()
                        .refused(page(
                                now,
                                KeptFields.figures(defaults(now)),
                                Form.blank().withFaultsOf(form),
                                ""));
    }

    /** Somebody has ordered; so nobody need be told to until the supplies come. */
    @PostMapping("/at/{bench}/kept/ordered")
    View ordered(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Reader reader = reader(now, typed);
        if (reader.empty("expected")) {
            reader.fault("expected", now.words().of("fault.day.empty"));
        }
        @Nullable LocalDate expected = reader.dayIfTyped("expected");
        Form form = entered(
                now,
                expected == null ? null : new OutlookFact.SuppliesOrdered(expected),
                reader,
                typed,
                Map.of(Rule.DAY_OUT_OF_RANGE, "expected"));
        return form.sound()
                ? Redirects.saved(now.place().path("/forecast"), saved(form), who(typed))
                : workplace
                        .screens()
                        .refused(new OrderedPage(
                                now.place(), form, workplace.ids().next()));
    }

    private View answer(BenchNow now, Form form, Map<String, String> typed) {
        return form.sound()
                ? Redirects.saved(now.place().path("/kept"), saved(form), who(typed))
                : workplace.screens().refused(page(now, KeptFields.figures(defaults(now)), form, ""));
    }

    /** The form with what is wrong, or with the number of the entry. */
    private Form entered(
            BenchNow now,
            @Nullable OutlookFact fact,
            Reader reader,
            Map<String, String> typed,
            Map<Rule, String> fields) {
        reader.required(Sender.WHO, "fault.who");
        Sender sender = Sender.of(typed);
        if (!sender.hasKey()) {
            reader.fault("form", now.words().of("fault.key"));
        }
        if (fact == null || !reader.form().sound()) {
            return reader.form();
        }
        Recording recording = workplace.benches().keepingTheOutlook().enter(now.id(), fact, sender.submission());
        String fault = workplace.fault(recording);
        if (!fault.isEmpty()) {
            String field = Answers.rule(recording)
                    .map(rule -> fields.getOrDefault(rule, "form"))
                    .orElse("form");
            return reader.form().faulting(field, fault);
        }
        return reader.form()
                .filled("saved", Long.toString(Answers.entry(recording).orElse(0L)));
    }

    private static long saved(Form form) {
        return Long.parseLong(form.value("saved"));
    }

    private static String who(Map<String, String> typed) {
        return Sender.of(typed).who();
    }

    private Reader reader(BenchNow now, Map<String, String> typed) {
        return new Reader(typed, now.bench().settings().units(), now.words());
    }

    private Defaults defaults(BenchNow now) {
        return Defaults.of(now, workplace);
    }

    /** What was sent, and in the fields that were not, what is kept. */
    private Form withKept(BenchNow now, Form sent) {
        Form form = KeptFields.figures(defaults(now));
        for (Map.Entry<String, String> field : sent.typed().entrySet()) {
            form = form.filled(field.getKey(), field.getValue());
        }
        return form.withFaultsOf(sent);
    }

    private KeptPage page(BenchNow now, Form figures, Form event, String back) {
        List<EventLine> events = now.bench().areas().outlook().listFrom(now.today()).stream()
                .map(planned -> new EventLine(
                        PlannedText.of(now, planned),
                        PlannedText.fills(now, planned),
                        planned.name(),
                        planned.from().toString()))
                .toList();
        return new KeptPage(
                now.place(),
                figures,
                KeptFields.groups(now, defaults(now)),
                event,
                events,
                back,
                workplace.ids().next());
    }
}
