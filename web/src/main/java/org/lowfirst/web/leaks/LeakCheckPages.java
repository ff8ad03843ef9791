package org.lowfirst.web.leaks;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.NoSuchElementException;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.JournalLine;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.honest.CheckingForLeaks;
import org.lowfirst.app.honest.CheckingForLeaks.LeakCheck;
import org.lowfirst.app.honest.Outcome;
import org.lowfirst.app.honest.Problem;
import org.lowfirst.station.Command.TakeReading;
import org.lowfirst.station.CylinderId;
import org.lowfirst.station.Fact;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.web.cylinder.CylinderChoice;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.leaks.LeakCheckPage.Result;
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

/**
 * Holds a timed leak check. Both readings are entries like any other; the address carries their numbers, so that the page can be
 * left and opened again.
 */
@Controller
public final class LeakCheckPages {

    private final Workplace workplace;

    public LeakCheckPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/leak-check")
    View ask(@PathVariable String bench, @RequestParam(defaultValue = "") String cylinder) {
        BenchNow now = workplace.open(bench);
        return workplace.screens().show(writer(now).begin(Form.with(Map.of("cylinder", cylinder))));
    }

    @PostMapping("/at/{bench}/leak-check")
    View begin(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        @Nullable
        CylinderId cylinder = CylinderChoice.find(now, reader.text("cylinder")).orElse(null);
        if (cylinder == null) {
            reader.fault("cylinder", now.words().of("fault.cylinder"));
        }
        reader.required("still", "fault.leak-check.still");
        @Nullable BigDecimal still = reader.numberIfTyped("still");
        @Nullable Reading reading = read(reader, now, cylinder);
        if (cylinder == null
                || still == null
                || reading == null
                || !reader.form().sound()) {
            return workplace.screens().refused(writer(now).begin(reader.form()));
        }
        Sender sender = Sender.of(typed);
        Recording recording = take(now, cylinder, reading, sender);
        String fault = workplace.fault(recording);
        if (!fault.isEmpty()) {
            return workplace.screens().refused(writer(now).begin(faulty(reader.form(), recording, fault)));
        }
        Instant since = reading.at()
                .minus(Duration.ofSeconds(still.multiply(BigDecimal.valueOf(60)).longValue()));
        long entry = Answers.entry(recording).orElse(0L);
        return Redirects.saved(
                now.place().path("/leak-check/hold?since=" + since.truncatedTo(ChronoUnit.SECONDS) + "&first=" + entry),
                entry,
                sender.who());
    }

    @GetMapping("/at/{bench}/leak-check/hold")
    View hold(
            @PathVariable String bench,
            @RequestParam long first,
            @RequestParam Instant since,
            @RequestParam(required = false) @Nullable Long second) {
        BenchNow now = workplace.open(bench);
        Fact.ReadingTaken begun = taken(now, first);
        LeakCheckWriter writer = writer(now);
        if (second == null) {
            return workplace.screens().show(writer.hold(begun, first, since, Form.blank()));
        }
        Fact.ReadingTaken ended = taken(now, second);
        if (!ended.cylinder().equals(begun.cylinder())) {
            throw new NoSuchThing("second reading " + second);
        }
        Outcome<LeakCheck> outcome =
                checking().check(now.id(), begun.cylinder(), since, begun.reading(), ended.reading());
        if (outcome instanceof Outcome.Given<LeakCheck> given) {
            Result result = writer.result(given.value(), ended.reading());
            return workplace.screens().show(writer.ended(begun, first, since, result));
        }
        Problem problem = ((Outcome.Declined<LeakCheck>) outcome).problem();
        Form form = Form.blank().faulting("form", problem.sentence() + " " + problem.advice());
        return workplace.screens().refused(writer.hold(begun, first, since, form));
    }

    @PostMapping("/at/{bench}/leak-check/hold")
    View end(
            @PathVariable String bench,
            @RequestParam long first,
            @RequestParam Instant since,
            @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Fact.ReadingTaken begun = taken(now, first);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        @Nullable Reading reading = read(reader, now, begun.cylinder());
        if (reading == null || !reader.form().sound()) {
            return workplace.screens().refused(writer(now).hold(begun, first, since, reader.form()));
        }
        Sender sender = Sender.of(typed);
        Recording recording = take(now, begun.cylinder(), reading, sender);
        String fault = workplace.fault(recording);
        if (!fault.isEmpty()) {
            Form form = faulty(reader.form(), recording, fault);
            return workplace.screens().refused(writer(now).hold(begun, first, since, form));
        }
        long entry = Answers.entry(recording).orElse(0L);
        return Redirects.saved(
                now.place().path("/leak-check/hold?since=" + since + "&first=" + first + "&second=" + entry),
                entry,
                sender.who());
    }

    private Recording take(BenchNow now, CylinderId cylinder, Reading reading, Sender sender) {
        return workplace
                .benches()
                .takingReadings()
                .take(now.id(), new TakeReading(cylinder, reading), sender.submission());
    }

    /** Here a temperature is asked for: a check without a thermometer is none. */
    private static @Nullable Reading read(Reader reader, BenchNow now, @Nullable CylinderId cylinder) {
        @Nullable StatedPressure pressure = reader.pressure("reading");
        reader.required("temperature", "fault.leak-check.temperature");
        @Nullable StatedTemperature temperature = reader.temperatureIfTyped("temperature");
        reader.required(Sender.WHO, "fault.who");
        if (!Sender.of(reader.form().typed()).hasKey()) {
            reader.fault("form", now.words().of("fault.key"));
        }
        if (pressure != null && cylinder != null) {
            now.offScale(cylinder, pressure).ifPresent(sentence -> reader.fault("reading", sentence));
        }
        return pressure == null || temperature == null ? null : now.reading(pressure, temperature);
    }

    private static Form faulty(Form form, Recording recording, String fault) {
        String field = Answers.rule(recording).isPresent() ? "reading" : "form";
        Form faulty = form.faulting(field, fault);
        return Answers.confirmable(recording) ? faulty.filled(Form.CONFIRMABLE, "yes") : faulty;
    }

    /** A reading of the journal that still counts. */
    private Fact.ReadingTaken taken(BenchNow now, long entry) {
        JournalLine line = line(now, entry);
        if (line.correctedBy() != null || !(line.entry().fact() instanceof Fact.ReadingTaken taken)) {
            throw new NoSuchThing("reading " + entry);
        }
        return taken;
    }

    private JournalLine line(BenchNow now, long entry) {
        try {
            return workplace.benches().readingTheJournal().getLine(now.id(), entry);
        } catch (NoSuchElementException none) {
            throw new NoSuchThing("reading " + entry);
        }
    }

    private LeakCheckWriter writer(BenchNow now) {
        return new LeakCheckWriter(now, checking().limits(), workplace.ids().next());
    }

    private CheckingForLeaks checking() {
        return workplace.benches().checkingForLeaks();
    }
}
