package org.lowfirst.web.warm;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.AllowingWarmStops;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.station.Command.AllowWarmStop;
import org.lowfirst.station.Command.ForbidWarmStop;
import org.lowfirst.station.Rule;
import org.lowfirst.station.WarmStop;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
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

/** Lets the responsible person allow warm stops above the mark, and anybody take that back. */
@Controller
public final class WarmStopsPages {

    private static final Map<Rule, String> FIELDS = Map.of(
            Rule.WARM_STOP_NEEDS_A_RULE, "followed",
            Rule.NOT_RESPONSIBLE, "who",
            Rule.NAME_EMPTY, "who");

    private final Workplace workplace;

    public WarmStopsPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/warm-stops")
    View show(@PathVariable String bench) {
        return workplace.screens().show(page(workplace.open(bench), Form.blank()));
    }

    @PostMapping("/at/{bench}/warm-stops")
    View allow(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Reader reader = reader(typed, now);
        String followed = reader.required("followed", "fault.warm-stops.followed");
        if (!reader.form().sound()) {
            return workplace.screens().refused(page(now, reader.form()));
        }
        Sender sender = Sender.of(typed);
        WarmStop permission = new WarmStop(sender.who(), followed);
        return answer(
                now,
                reader.form(),
                allowing().allow(now.id(), new AllowWarmStop(permission), sender.submission()),
                sender);
    }

    @PostMapping("/at/{bench}/warm-stops/off")
    View forbid(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Reader reader = reader(typed, now);
        if (!reader.form().sound()) {
            return workplace.screens().refused(page(now, reader.form()));
        }
        Sender sender = Sender.of(typed);
        return answer(
                now,
                reader.form(),
                allowing().forbid(now.id(), new ForbidWarmStop(sender.who()), sender.submission()),
                sender);
    }

    private static Reader reader(Map<String, String> typed, BenchNow now) {
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        reader.required(Sender.WHO, "fault.who");
        if (!Sender.of(typed).hasKey()) {
            reader.fault("form", now.words().of("fault.key"));
        }
        return reader;
    }

    private View answer(BenchNow now, Form form, Recording recording, Sender sender) {
        String fault = workplace.fault(recording);
        if (fault.isEmpty()) {
            return Redirects.saved(
                    now.place().path("/warm-stops"), Answers.entry(recording).orElse(0L), sender.who());
        }
        String field = Answers.rule(recording)
                .map(rule -> FIELDS.getOrDefault(rule, "form"))
                .orElse("form");
        return workplace.screens().refused(page(now, form.faulting(field, fault)));
    }

    private WarmStopsPage page(BenchNow now, Form form) {
        @Nullable WarmStop permission = now.bench().warmStop();
        return new WarmStopsPage(
                now.place(),
                permission == null
                        ? ""
                        : now.words().of("warm-stops.note", permission.responsible(), permission.followed()),
                form,
                workplace.ids().next());
    }

    private AllowingWarmStops allowing() {
        return workplace.benches().allowingWarmStops();
    }
}
