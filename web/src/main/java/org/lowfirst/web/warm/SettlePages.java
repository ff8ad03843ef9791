package org.lowfirst.web.warm;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.honest.Outcome;
import org.lowfirst.app.honest.StopAdvice;
import org.lowfirst.app.honest.StoppingAndSettling;
import org.lowfirst.app.honest.StoppingAndSettling.StatedNow;
import org.lowfirst.gas.Temperature;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command.ReadWarmBottle;
import org.lowfirst.station.OpenFill;
import org.lowfirst.station.Rule;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.view.Redirects;
import org.lowfirst.web.warm.SettlePage.BottleLine;
import org.lowfirst.web.warm.SettlePage.FeelLine;
import org.lowfirst.web.warm.SettlePage.FillLine;
import org.lowfirst.web.warm.SettlePage.SettleSheet;
import org.lowfirst.web.warm.SettlePage.UnitWords;
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

/** Says where to stop a warm fill and what the bottle settles to. Enters nothing. */
@Controller
public final class SettlePages {

    private final Workplace workplace;

    public SettlePages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/settle")
    View stated(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        if (!typed.containsKey("reading")) {
            return workplace.screens().show(page(now, null, Form.with(typed), null));
        }
        SettleFields fields = SettleFields.read(typed, now);
        @Nullable Bottle bottle = bottle(now, typed.getOrDefault("bottle", ""));
        if (bottle == null) {
            fields = fields.faulting("bottle", now.words().of("fault.bottle"));
        }
        @Nullable Temperature gas = fields.gasOrFelt(now);
        if (gas == null && fields.form().fault("gas").isEmpty()) {
            fields = fields.faulting("gas", now.words().of("fault.gas"));
        }
        @Nullable StatedPressure reading = fields.reading();
        if (bottle == null || gas == null || reading == null || !fields.form().sound()) {
            return workplace.screens().refused(page(now, null, fields.form(), null));
        }
        return answer(now, null, fields, stopping().forStated(now.id(), stated(bottle.id(), reading, gas, fields)));
    }

    @GetMapping("/at/{bench}/fill/{fill}/settle")
    View inAFill(@PathVariable String bench, @PathVariable String fill, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        @Nullable
        OpenFill open = now.bench().openFills().values().stream()
                .filter(any -> any.id().value().equals(fill))
                .findFirst()
                .orElse(null);
        if (open == null) {
            return Redirects.to(now.place().path("/fill/" + fill + "/done"));
        }
        FillLine line = line(now, open, typed.getOrDefault("at", ""));
        if (!typed.containsKey("reading")) {
            return workplace.screens().show(page(now, line, Form.with(typed), null));
        }
        SettleFields fields = SettleFields.read(typed, now);
        @Nullable StatedPressure reading = fields.reading();
        if (reading != null) {
            String off = now.offScale(open.bottle(), reading).orElse("");
            fields = off.isEmpty() ? fields : fields.faulting("reading", off);
        }
        if (reading == null || !fields.form().sound()) {
            return workplace.screens().refused(page(now, line, fields.form(), null));
        }
        @Nullable Temperature gas = fields.gasOrFelt(now);
        Outcome<StopAdvice> advice = gas == null
                ? stopping().forOpenFill(now.id(), now.reading(reading, null), fields.empty())
                : stopping().forStated(now.id(), stated(open.bottle(), reading, gas, fields, open));
        return answer(now, line, fields, advice);
    }

    /** Keeps a reading of warm gas: what the bottle reads once settled is held against it. */
    @PostMapping("/at/{bench}/settle/keep")
    View keep(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        @Nullable Bottle bottle = bottle(now, typed.getOrDefault("bottle", ""));
        @Nullable StatedPressure reading = reader.pressure("reading");
        reader.required("gas", "fault.gas");
        @Nullable StatedTemperature gas = reader.gasTemperatureIfTyped("gas");
        @Nullable StatedTemperature temperature = reader.temperatureIfTyped("temperature");
        reader.required(Sender.WHO, "fault.who");
        Sender sender = Sender.of(typed);
        if (!sender.hasKey()) {
            reader.fault("form", now.words().of("fault.key"));
        }
        if (bottle == null || reading == null || gas == null || !reader.form().sound()) {
            return workplace.screens().refused(page(now, null, reader.form(), null));
        }
        Recording recording = workplace
                .benches()
                .takingReadings()
                .takeWarm(
                        now.id(),
                        new ReadWarmBottle(bottle.id(), now.reading(reading, temperature), gas),
                        sender.submission());
        String fault = workplace.fault(recording);
        if (fault.isEmpty()) {
            return Redirects.saved(
                    now.place().path("/bottles/" + bottle.id()),
                    Answers.entry(recording).orElse(0L),
                    sender.who());
        }
        String field = Answers.rule(recording)
                        .filter(Rule.TEMPERATURE_OUT_OF_RANGE::equals)
                        .isPresent()
                ? "gas"
                : "reading";
        return workplace.screens().refused(page(now, null, reader.form().faulting(field, fault), null));
    }

    private static StatedNow stated(BottleId bottle, StatedPressure reading, Temperature gas, SettleFields fields) {
        return new StatedNow(
                bottle,
                reading.gauge(),
                gas,
                fields.wall(),
                fields.bench(),
                fields.target() == null ? null : fields.target().gauge(),
                fields.empty());
    }

    private static StatedNow stated(
            BottleId bottle, StatedPressure reading, Temperature gas, SettleFields fields, OpenFill open) {
        return new StatedNow(
                bottle,
                reading.gauge(),
                gas,
                fields.wall(),
                fields.bench() == null ? open.before().temperature().temperature() : fields.bench(),
                open.target().gauge(),
                fields.empty());
    }

    private View answer(BenchNow now, @Nullable FillLine fill, SettleFields fields, Outcome<StopAdvice> outcome) {
        if (outcome instanceof Outcome.Given<StopAdvice> given) {
            SettleSheet sheet = new SettleWriter(now).sheet(given.value(), fields);
            return workplace.screens().show(page(now, fill, fields.form(), sheet));
        }
        Outcome.Declined<StopAdvice> declined = (Outcome.Declined<StopAdvice>) outcome;
        return workplace
                .screens()
                .refused(page(now, fill, fields.faulting(declined.problem()).form(), null));
    }

    private static FillLine line(BenchNow now, OpenFill open, String at) {
        String steps = now.place().path("/fill/" + open.id());
        boolean known = at.matches("[A-Za-z0-9._-]{1,80}");
        return new FillLine(
                steps + "/settle",
                known ? steps + "?at=" + at + "&seen=" + now.now().getEpochSecond() : steps,
                known ? at : "",
                now.bench().getBottle(open.bottle()).details().name());
    }

    private SettlePage page(BenchNow now, @Nullable FillLine fill, Form form, @Nullable SettleSheet sheet) {
        List<BottleLine> bottles = new ArrayList<>();
        if (fill == null) {
            now.bench().listBottles().stream()
                    .filter(Bottle::inUse)
                    .forEach(bottle -> bottles.add(
                            new BottleLine(bottle.id().value(), bottle.details().name())));
        }
        UnitWords unit = new UnitWords(
                now.figures().pressureUnit(),
                now.figures().temperatureUnit(),
                now.figures()
                        .temperature(now.bench()
                                .settings()
                                .surroundings()
                                .usualTemperature()
                                .temperature()));
        List<FeelLine> feels = Arrays.stream(Feel.values())
                .map(feel -> new FeelLine(feel.text(), now.words().of("settle.feel." + feel.text())))
                .toList();
        return new SettlePage(
                now.place(),
                fill,
                bottles,
                unit,
                feels,
                form,
                sheet,
                workplace.ids().next());
    }

    private static @Nullable Bottle bottle(BenchNow now, String id) {
        return now.bench().listBottles().stream()
                .filter(bottle -> bottle.id().value().equals(id))
                .findFirst()
                .orElse(null);
    }

    private StoppingAndSettling stopping() {
        return workplace.benches().stoppingAndSettling();
    }
}
