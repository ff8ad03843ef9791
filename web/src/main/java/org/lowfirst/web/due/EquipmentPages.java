package org.lowfirst.web.due;

import java.time.LocalDate;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.KeepingEquipment;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.station.due.Upkeep;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
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

/** Describes equipment that is looked after, notes when it was done, and ends it. */
@Controller
public final class EquipmentPages {

    private final Workplace workplace;

    public EquipmentPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/due/equipment")
    View show(@PathVariable String bench, @RequestParam(defaultValue = "") String name) {
        BenchNow now = workplace.open(bench);
        Form form = name.isEmpty()
                ? EquipmentFields.blank(now.today())
                : EquipmentFields.filled(upkeep(now, name), now.today());
        return workplace.screens().show(page(now, name, form));
    }

    @PostMapping("/at/{bench}/due/equipment")
    View describe(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        String known = typed.getOrDefault("known", "");
        Reader reader = reader(typed, now);
        @Nullable Upkeep upkeep = EquipmentFields.read(reader, now.words());
        if (upkeep != null
                && known.isEmpty()
                && now.bench().areas().care().upkeep().containsKey(upkeep.name())) {
            reader.fault("name", now.words().of("rule.name_taken", upkeep.name()));
            upkeep = null;
        }
        if (upkeep == null) {
            return workplace.screens().refused(page(now, known, reader.form()));
        }
        Sender sender = Sender.of(typed);
        return answer(
                now, known, reader.form(), keeping().describe(now.id(), upkeep, sender.submission()), "last", sender);
    }

    @PostMapping("/at/{bench}/due/done")
    View done(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        String name = typed.getOrDefault("known", "");
        Reader reader = reader(typed, now);
        reader.required("day", "fault.equipment.last");
        @Nullable LocalDate day = reader.dayIfTyped("day");
        reader.required(Sender.WHO, "fault.who");
        Form form = EquipmentFields.filled(upkeep(now, name), now.today())
                .filled("day", reader.text("day"))
                .filled(Sender.WHO, reader.text(Sender.WHO));
        if (day == null || !reader.form().sound()) {
            return workplace.screens().refused(page(now, name, form.withFaultsOf(reader.form())));
        }
        Sender sender = Sender.of(typed);
        return answer(now, name, form, keeping().done(now.id(), name, day, sender.submission()), "day", sender);
    }

    @PostMapping("/at/{bench}/due/ended")
    View end(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        String name = typed.getOrDefault("known", "");
        Reader reader = reader(typed, now);
        String reason = reader.required("reason", "fault.reason");
        reader.required(Sender.WHO, "fault.who");
        Form form = EquipmentFields.filled(upkeep(now, name), now.today())
                .filled("reason", reason)
                .filled(Sender.WHO, reader.text(Sender.WHO));
        if (!reader.form().sound()) {
            return workplace.screens().refused(page(now, name, form.withFaultsOf(reader.form())));
        }
        Sender sender = Sender.of(typed);
        return answer(now, name, form, keeping().end(now.id(), name, reason, sender.submission()), "day", sender);
    }

    private View answer(BenchNow now, String name, Form form, Recording recording, String day, Sender sender) {
        String fault = workplace.fault(recording);
        if (fault.isEmpty()) {
            return Redirects.saved(
                    now.place().path("/due"), Answers.entry(recording).orElse(0L), sender.who());
        }
        String field = EquipmentFields.field(Answers.rule(recording), day);
        return workplace.screens().refused(page(now, name, form.faulting(field, fault)));
    }

    private EquipmentPage page(BenchNow now, String name, Form form) {
        return new EquipmentPage(
                now.place(),
                name,
                EquipmentFields.kinds(now.words()),
                form,
                workplace.ids().next());
    }

    private static Reader reader(Map<String, String> typed, BenchNow now) {
        return new Reader(typed, now.bench().settings().units(), now.words());
    }

    private static Upkeep upkeep(BenchNow now, String name) {
        @Nullable Upkeep upkeep = now.bench().areas().care().upkeep().get(name);
        if (upkeep == null) {
            throw new NoSuchThing("equipment " + name);
        }
        return upkeep;
    }

    private KeepingEquipment keeping() {
        return workplace.benches().keepingEquipment();
    }
}
