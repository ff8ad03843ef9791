package org.lowfirst.web.bottles;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command.AmendBottle;
import org.lowfirst.station.Command.RegisterBottle;
import org.lowfirst.station.Command.RetireBottle;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.WaterVolume;
import org.lowfirst.web.cylinder.VolumeFields;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.verdict.Standing;
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

/** Adds, changes and retires bottles. */
@Controller
public final class BottlePages {

    private final Workplace workplace;
    private final VolumeFields volumes;

    public BottlePages(Workplace workplace) {
        this.workplace = workplace;
        this.volumes = new VolumeFields(workplace::words);
    }

    @GetMapping("/at/{bench}/bottles/new")
    View ask(@PathVariable String bench) {
        return workplace.screens().show(page(workplace.open(bench), null, Form.blank()));
    }

    @PostMapping("/at/{bench}/bottles/new")
    View add(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        @Nullable BottleDetails details = details(reader, now);
        Sender sender = Sender.of(typed);
        if (details == null) {
            return workplace.screens().refused(page(now, null, reader.form()));
        }
        BottleId id = new BottleId(sender.key());
        Recording recording = workplace
                .benches()
                .registeringBottles()
                .register(now.id(), new RegisterBottle(id, details, null), sender.submission());
        String next = typed.containsKey("then-fill") ? "/fill/plan?bottle=" + id : "/bottles";
        return answer(now, null, reader.form(), recording, next, sender);
    }

    @GetMapping("/at/{bench}/bottles/{id}")
    View show(@PathVariable String bench, @PathVariable String id) {
        BenchNow now = workplace.open(bench);
        Bottle bottle = bottle(now, id);
        return workplace.screens().show(page(now, bottle, filled(bottle, now)));
    }

    @PostMapping("/at/{bench}/bottles/{id}")
    View change(@PathVariable String bench, @PathVariable String id, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Bottle bottle = bottle(now, id);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        @Nullable BottleDetails details = details(reader, now);
        Sender sender = Sender.of(typed);
        if (details == null) {
            return workplace.screens().refused(page(now, bottle, reader.form()));
        }
        Recording recording = workplace
                .benches()
                .registeringBottles()
                .amend(now.id(), new AmendBottle(bottle.id(), details), sender.submission());
        return answer(now, bottle, reader.form(), recording, "/bottles", sender);
    }

    @PostMapping("/at/{bench}/bottles/{id}/retire")
    View retire(@PathVariable String bench, @PathVariable String id, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Bottle bottle = bottle(now, id);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        String reason = reader.required("reason", "fault.reason");
        reader.required(Sender.WHO, "fault.who");
        Sender sender = Sender.of(typed);
        if (!reader.form().sound()) {
            Form form = filled(bottle, now).filled("reason", reason).withFaultsOf(reader.form());
            return workplace.screens().refused(page(now, bottle, form));
        }
        Recording recording = workplace
                .benches()
                .registeringBottles()
                .retire(now.id(), new RetireBottle(bottle.id(), reason), sender.submission());
        return answer(now, bottle, filled(bottle, now), recording, "/bottles", sender);
    }

    private View answer(
            BenchNow now, @Nullable Bottle bottle, Form form, Recording recording, String next, Sender sender) {
        String fault = workplace.fault(recording);
        if (fault.isEmpty()) {
            return Redirects.saved(
                    now.place().path(next), Answers.entry(recording).orElse(0L), sender.who());
        }
        Form faulty = form.faulting(BottleFaults.field(Answers.rule(recording)), fault);
        Form again = Answers.confirmable(recording) ? faulty.filled(Form.CONFIRMABLE, "yes") : faulty;
        return workplace.screens().refused(page(now, bottle, again));
    }

    private @Nullable BottleDetails details(Reader reader, BenchNow now) {
        String name = reader.required("name", "fault.name");
        @Nullable
        WaterVolume volume = volumes.waterVolume(reader, now.bench().settings().rules());
        @Nullable StatedPressure marked = volumes.servicePressure(reader);
        @Nullable StatedPressure usual = reader.pressureIfTyped("usual");
        reader.required(Sender.WHO, "fault.who");
        if (!Sender.of(reader.form().typed()).hasKey()) {
            reader.fault("form", now.words().of("fault.key"));
        }
        return volume == null || marked == null || !reader.form().sound()
                ? null
                : new BottleDetails(name, reader.text("owner"), volume, marked, null, usual);
    }

    private BottlePage page(BenchNow now, @Nullable Bottle bottle, Form form) {
        return new BottlePage(
                now.place(),
                bottle == null ? "" : bottle.id().value(),
                bottle == null ? "" : bottle.details().name(),
                now.figures().pressureUnit(),
                bottle == null
                        ? null
                        : Standing.find(
                                        now,
                                        workplace.benches().judgingReadings().history(now.id()),
                                        bottle.id())
                                .orElse(null),
                volumes.choices(),
                form,
                workplace.ids().next());
    }

    private static Form filled(Bottle bottle, BenchNow now) {
        BottleDetails details = bottle.details();
        Map<String, String> fields = new HashMap<>();
        fields.put("name", details.name());
        fields.put("owner", details.owner());
        fields.put("marked", now.figures().toType(details.servicePressure()));
        @Nullable StatedPressure usual = details.usualTarget();
        fields.put("usual", usual == null ? "" : now.figures().toType(usual));
        fields.putAll(VolumeFields.filled(details.waterVolume(), now.figures()));
        return Form.with(fields);
    }

    private static Bottle bottle(BenchNow now, String id) {
        return now.bench().listBottles().stream()
                .filter(bottle -> bottle.id().value().equals(id))
                .findFirst()
                .orElseThrow(() -> new NoSuchThing("bottle " + id));
    }
}
