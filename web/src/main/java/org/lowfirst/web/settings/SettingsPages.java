package org.lowfirst.web.settings;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Rule;
import org.lowfirst.station.Settings;
import org.lowfirst.station.StatedAbsolutePressure;
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

/** Sets a bench up and changes what it is set to. */
@Controller
public final class SettingsPages {

    private static final Map<Rule, String> FIELDS = Map.of(
            Rule.NAME_EMPTY, "name",
            Rule.NAME_TAKEN, "name",
            Rule.FULL_SUPPLY_NOT_ABOVE_ZERO, "full",
            Rule.SERVICE_PRESSURE_UNUSUAL, "full",
            Rule.SERVICE_PRESSURE_IMPOSSIBLE, "full",
            Rule.HOSE_VOLUME_UNUSUAL, "hose",
            Rule.TEMPERATURE_OUT_OF_RANGE, "temperature");

    private final Workplace workplace;

    public SettingsPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/new")
    View ask() {
        return workplace.screens().show(page(null, Form.with(SettingsFields.fresh())));
    }

    @PostMapping("/new")
    View open(@RequestParam Map<String, String> typed) {
        Reader reader = new Reader(typed, SettingsFields.units(typed), workplace.words());
        @Nullable Settings settings = SettingsFields.read(reader, StatedAbsolutePressure.STANDARD, workplace.words());
        Sender sender = Sender.of(typed);
        if (!sender.hasKey()) {
            reader.fault("form", workplace.words().of("fault.key"));
        }
        if (settings == null || !reader.form().sound()) {
            return workplace.screens().refused(page(null, reader.form()));
        }
        BenchId id = new BenchId(sender.key());
        String first = settings.people().get(0);
        Recording recording = workplace
                .benches()
                .openingABench()
                .open(id, settings, new Sender(first, sender.key(), sender.confirmed()).submission());
        return answer(null, reader.form(), recording, "/at/" + id + "/bank", first);
    }

    @GetMapping("/at/{bench}/settings")
    View show(@PathVariable String bench) {
        BenchNow now = workplace.open(bench);
        return workplace
                .screens()
                .show(page(now, Form.with(SettingsFields.filled(now.bench().settings(), now.figures()))));
    }

    @PostMapping("/at/{bench}/settings")
    View change(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Reader reader = new Reader(typed, SettingsFields.units(typed), now.words());
        reader.required(Sender.WHO, "fault.who");
        @Nullable
        Settings settings = SettingsFields.read(
                reader, now.bench().settings().surroundings().ambient(), now.words());
        if (settings == null) {
            return workplace.screens().refused(page(now, reader.form()));
        }
        Sender sender = Sender.of(typed);
        Recording recording =
                workplace.benches().openingABench().changeSettings(now.id(), settings, sender.submission());
        return answer(now, reader.form(), recording, now.place().path("/settings"), sender.who());
    }

    private View answer(@Nullable BenchNow now, Form form, Recording recording, String next, String who) {
        String fault = workplace.fault(recording);
        if (fault.isEmpty()) {
            return Redirects.saved(next, Answers.entry(recording).orElse(0L), who);
        }
        String field = Answers.rule(recording)
                .map(rule -> FIELDS.getOrDefault(rule, "form"))
                .orElse("form");
        Form faulty = form.faulting(field, fault);
        return workplace
                .screens()
                .refused(page(now, Answers.confirmable(recording) ? faulty.filled(Form.CONFIRMABLE, "yes") : faulty));
    }

    private SettingsPage page(@Nullable BenchNow now, Form form) {
        boolean demo = now != null
                && workplace.benches().openingABench().listBenches().stream()
                        .anyMatch(bench -> bench.demo() && bench.id().equals(now.id()));
        return new SettingsPage(
                now == null ? null : now.place(), demo, form, workplace.ids().next());
    }
}
