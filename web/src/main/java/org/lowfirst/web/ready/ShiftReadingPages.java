package org.lowfirst.web.ready;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.KeepingReady;
import org.lowfirst.app.bench.ReadyNow;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.station.Assignment;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.Command.TakeReading;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.ready.ReadyPage.Next;
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

/** Takes the readings of a shift, one bottle after the other. */
@Controller
public final class ShiftReadingPages {

    private final Workplace workplace;

    public ShiftReadingPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/ready/read")
    View ask(@PathVariable String bench, @RequestParam(defaultValue = "") String bottle) {
        BenchNow now = workplace.open(bench);
        return workplace.screens().show(page(now, ReadyBottles.bottle(now, bottle), Form.blank()));
    }

    @PostMapping("/at/{bench}/ready/read")
    View take(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Bottle bottle = ReadyBottles.bottle(now, typed.getOrDefault("bottle", ""));
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        @Nullable StatedPressure pressure = reader.pressure("reading");
        @Nullable StatedTemperature temperature = reader.temperatureIfTyped("temperature");
        reader.required(Sender.WHO, "fault.who");
        if (pressure == null || !reader.form().sound()) {
            return workplace.screens().refused(page(now, bottle, reader.form()));
        }
        Sender sender = Sender.of(typed);
        Recording recording = workplace
                .benches()
                .takingReadings()
                .take(now.id(), new TakeReading(bottle.id(), now.reading(pressure, temperature)), sender.submission());
        String fault = workplace.fault(recording);
        if (!fault.isEmpty()) {
            Form form = reader.form().faulting("reading", fault);
            return workplace
                    .screens()
                    .refused(page(
                            now, bottle, Answers.confirmable(recording) ? form.filled(Form.CONFIRMABLE, "yes") : form));
        }
        @Nullable Next next = new ReadyWriter(now, keeping().now(now.id())).next(null);
        String on = next == null ? now.place().path("/ready") : next.link();
        return Redirects.saved(on, Answers.entry(recording).orElse(0L), sender.who());
    }

    private ShiftReadingPage page(BenchNow now, Bottle bottle, Form form) {
        ReadyNow ready = keeping().now(now.id());
        ReadyWriter writer = new ReadyWriter(now, ready);
        String name = bottle.details().name();
        boolean unread = writer.unread().contains(name);
        @Nullable Next next = writer.next(unread ? name : null);
        @Nullable Reading latest = bottle.latest();
        return new ShiftReadingPage(
                now.place(),
                bottle.id().value(),
                name,
                limits(now, ready, bottle),
                latest == null
                        ? ""
                        : now.words()
                                .of(
                                        "bottle.latest",
                                        now.figures()
                                                .pressureWithUnit(
                                                        latest.pressure().gauge()),
                                        now.age(latest.at())),
                now.figures().pressureUnit(),
                unread ? writer.unread().size() : 0,
                next == null ? "" : next.link(),
                form,
                workplace.ids().next());
    }

    private static String limits(BenchNow now, ReadyNow ready, Bottle bottle) {
        @Nullable
        Assignment assignment = now.bench().areas().care().squad().assigned().get(bottle.id());
        return ready.groups().stream()
                .filter(group -> assignment != null && group.name().equals(assignment.group()))
                .map(group -> now.words().of("ready.group", group.name(), new ReadyWriter(now, ready).limits(group)))
                .findFirst()
                .orElse("");
    }

    private KeepingReady keeping() {
        return workplace.benches().keepingReady();
    }
}
