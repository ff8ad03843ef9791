package org.lowfirst.web.bank;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.KeepingTheBank;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.station.Command.AmendSupply;
import org.lowfirst.station.Command.ConnectSupply;
import org.lowfirst.station.Command.RemoveSupply;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.Supply;
import org.lowfirst.station.SupplyDetails;
import org.lowfirst.station.SupplyId;
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

/** Connects, changes and removes supplies. */
@Controller
public final class SupplyPages {

    private final Workplace workplace;
    private final VolumeFields volumes;

    public SupplyPages(Workplace workplace) {
        this.workplace = workplace;
        this.volumes = new VolumeFields(workplace::words);
    }

    @GetMapping("/at/{bench}/supplies/new")
    View ask(@PathVariable String bench) {
        return workplace.screens().show(page(workplace.open(bench), null, Form.blank()));
    }

    @PostMapping("/at/{bench}/supplies/new")
    View connect(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        @Nullable SupplyDetails details = details(reader, now);
        @Nullable StatedPressure reading = reader.pressure("reading");
        @Nullable StatedTemperature temperature = reader.temperatureIfTyped("temperature");
        Sender sender = Sender.of(typed);
        if (details == null || reading == null || !reader.form().sound()) {
            return workplace.screens().refused(page(now, null, reader.form()));
        }
        Recording recording = keeping()
                .connect(
                        now.id(),
                        new ConnectSupply(new SupplyId(sender.key()), details, now.reading(reading, temperature)),
                        sender.submission());
        return answer(now, null, reader.form(), recording, sender);
    }

    @GetMapping("/at/{bench}/supplies/{id}")
    View show(@PathVariable String bench, @PathVariable String id) {
        BenchNow now = workplace.open(bench);
        Supply supply = supply(now, id);
        return workplace.screens().show(page(now, supply, filled(supply, now)));
    }

    @PostMapping("/at/{bench}/supplies/{id}")
    View change(@PathVariable String bench, @PathVariable String id, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Supply supply = supply(now, id);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        @Nullable SupplyDetails details = details(reader, now);
        Sender sender = Sender.of(typed);
        if (details == null) {
            return workplace.screens().refused(page(now, supply, reader.form()));
        }
        Recording recording = keeping().amend(now.id(), new AmendSupply(supply.id(), details), sender.submission());
        return answer(now, supply, reader.form(), recording, sender);
    }

    @PostMapping("/at/{bench}/supplies/{id}/remove")
    View remove(@PathVariable String bench, @PathVariable String id, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Supply supply = supply(now, id);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        @Nullable StatedPressure residual = reader.pressureIfTyped("residual");
        String reason = reader.required("reason", "fault.reason");
        reader.required(Sender.WHO, "fault.who");
        Sender sender = Sender.of(typed);
        Form form = filled(supply, now).filled("reason", reason).filled("residual", reader.text("residual"));
        if (!reader.form().sound()) {
            return workplace.screens().refused(page(now, supply, form.withFaultsOf(reader.form())));
        }
        @Nullable Reading left = residual == null ? null : now.reading(residual, null);
        Recording recording =
                keeping().remove(now.id(), new RemoveSupply(supply.id(), left, reason), sender.submission());
        return answer(now, supply, form, recording, sender);
    }

    private View answer(BenchNow now, @Nullable Supply supply, Form form, Recording recording, Sender sender) {
        String fault = workplace.fault(recording);
        if (fault.isEmpty()) {
            String came = supply == null ? "?came=" + sender.key() : "";
            return Redirects.saved(
                    now.place().path("/bank" + came), Answers.entry(recording).orElse(0L), sender.who());
        }
        Form faulty = form.faulting(SupplyFaults.field(Answers.rule(recording)), fault);
        Form again = Answers.confirmable(recording) ? faulty.filled(Form.CONFIRMABLE, "yes") : faulty;
        return workplace.screens().refused(page(now, supply, again));
    }

    private @Nullable SupplyDetails details(Reader reader, BenchNow now) {
        String name = reader.required("name", "fault.name");
        @Nullable
        WaterVolume volume = volumes.waterVolume(reader, now.bench().settings().rules());
        @Nullable StatedPressure marked = volumes.servicePressure(reader);
        reader.required(Sender.WHO, "fault.who");
        if (!Sender.of(reader.form().typed()).hasKey()) {
            reader.fault("form", now.words().of("fault.key"));
        }
        String serial = reader.text("serial");
        return volume == null || marked == null || !reader.form().sound()
                ? null
                : new SupplyDetails(name, serial.isEmpty() ? null : serial, volume, marked);
    }

    private SupplyPage page(BenchNow now, @Nullable Supply supply, Form form) {
        return new SupplyPage(
                now.place(),
                supply == null ? "" : supply.id().value(),
                supply == null ? "" : supply.details().name(),
                now.figures().pressureUnit(),
                now.figures().temperatureUnit(),
                now.figures()
                        .temperature(now.bench()
                                .settings()
                                .surroundings()
                                .usualTemperature()
                                .temperature()),
                supply == null
                        ? null
                        : Standing.find(
                                        now,
                                        workplace.benches().judgingReadings().history(now.id()),
                                        supply.id())
                                .orElse(null),
                volumes.choices(),
                form,
                workplace.ids().next());
    }

    private static Form filled(Supply supply, BenchNow now) {
        SupplyDetails details = supply.details();
        Map<String, String> fields = new HashMap<>();
        fields.put("name", details.name());
        fields.put("serial", details.serial() == null ? "" : details.serial());
        fields.put("marked", now.figures().toType(details.servicePressure()));
        fields.putAll(VolumeFields.filled(details.waterVolume(), now.figures()));
        return Form.with(fields);
    }

    private static Supply supply(BenchNow now, String id) {
        return now.bench().bank().stream()
                .filter(supply -> supply.id().value().equals(id))
                .findFirst()
                .orElseThrow(() -> new NoSuchThing("supply " + id));
    }

    private KeepingTheBank keeping() {
        return workplace.benches().keepingTheBank();
    }
}
