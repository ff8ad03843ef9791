package org.lowfirst.web.gate;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.KeepingMarkings;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.bench.Submission;
import org.lowfirst.app.fitness.FitnessReport;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.rules.Answer;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.view.NoSuchThing;
import org.lowfirst.web.view.Redirects;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Sender;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;

/** Takes what is answered, done and taken on before a fill, and goes back to the plan. */
@Controller
public final class LookPages {

    /** Name of the field of a question, before its code. */
    private static final String QUESTION = "q-";

    /** Codes of the questions that stood on the page somebody said "none of these" to. */
    private static final String SHOWN = "shown";

    private static final String BY = "by";

    private final Workplace workplace;

    public LookPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @PostMapping("/at/{bench}/fill/look")
    View look(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Bottle bottle = bottle(now, typed);
        FitnessReport report = report(now, bottle, typed);
        Reader reader = reader(now, typed);
        Map<String, Answer> answers = new LinkedHashMap<>();
        for (FitnessReport.Question question : report.questions()) {
            Answer answer = answer(reader.text(QUESTION + question.code()));
            if (answer == null) {
                reader.fault(QUESTION + question.code(), now.words().of("fault.question"));
            } else {
                answers.put(question.code(), answer);
            }
        }
        who(reader, now);
        if (!reader.form().sound()) {
            return again(now, bottle, report, reader.form());
        }
        return sent(
                now,
                bottle,
                report,
                reader.form(),
                keeping().answer(now.id(), bottle.id(), answers, submission(typed)));
    }

    /** All questions at one look: each is answered with no, if each stood on the page that was answered. */
    @PostMapping("/at/{bench}/fill/look-over")
    View lookOver(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Bottle bottle = bottle(now, typed);
        FitnessReport report = report(now, bottle, typed);
        Reader reader = reader(now, typed);
        List<String> shown = List.of(reader.text(SHOWN).split(" "));
        Map<String, Answer> answers = new LinkedHashMap<>();
        report.questions().forEach(question -> answers.put(question.code(), Answer.NO));
        if (!shown.containsAll(answers.keySet())) {
            reader.fault(SHOWN, now.words().of("fault.not-shown"));
        }
        who(reader, now);
        if (!reader.form().sound()) {
            return again(now, bottle, report, reader.form());
        }
        return sent(
                now,
                bottle,
                report,
                reader.form(),
                keeping().answer(now.id(), bottle.id(), answers, submission(typed)));
    }

    @PostMapping("/at/{bench}/fill/set-aside")
    View setAside(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Bottle bottle = bottle(now, typed);
        FitnessReport report = report(now, bottle, typed);
        Reader reader = reader(now, typed);
        String reason = reader.required("reason", "fault.reason");
        String filler = reader.required("filler", "fault.who");
        who(reader, now);
        if (!reader.form().sound()) {
            return again(now, bottle, report, reader.form());
        }
        Recording recording =
                keeping().setAside(now.id(), bottle.id(), report.toSetAside(), filler, reason, submission(typed));
        return sent(now, bottle, report, reader.form(), recording);
    }

    @PostMapping("/at/{bench}/fill/found-open")
    View foundOpen(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        return done(
                bench,
                typed,
                false,
                (now, bottle, by, submission) -> keeping().foundOpen(now.id(), bottle.id(), submission));
    }

    @PostMapping("/at/{bench}/fill/inspected")
    View inspected(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        return done(
                bench,
                typed,
                true,
                (now, bottle, by, submission) -> keeping().inspected(now.id(), bottle.id(), by, submission));
    }

    @PostMapping("/at/{bench}/fill/hammer-tested")
    View hammerTested(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        return done(
                bench,
                typed,
                true,
                (now, bottle, by, submission) -> keeping().hammerTested(now.id(), bottle.id(), by, submission));
    }

    /** What is entered of a bottle by one button. */
    private interface Entering {
        Recording enter(BenchNow now, Bottle bottle, String by, Submission submission);
    }

    private View done(String bench, Map<String, String> typed, boolean named, Entering entering) {
        BenchNow now = workplace.open(bench);
        Bottle bottle = bottle(now, typed);
        FitnessReport report = report(now, bottle, typed);
        Reader reader = reader(now, typed);
        String by = named ? reader.required(BY, "fault.by") : "";
        who(reader, now);
        if (!reader.form().sound()) {
            return again(now, bottle, report, reader.form());
        }
        return sent(now, bottle, report, reader.form(), entering.enter(now, bottle, by, submission(typed)));
    }

    private View sent(BenchNow now, Bottle bottle, FitnessReport report, Form form, Recording recording) {
        String fault = workplace.fault(recording);
        return fault.isEmpty()
                ? Redirects.saved(
                        now.place().path("/fill/plan" + GatePage.query(form.typed())), 0, form.value(Sender.WHO))
                : again(now, bottle, report, form.faulting("form", fault));
    }

    private View again(BenchNow now, Bottle bottle, FitnessReport report, Form form) {
        return workplace.screens().refused(Gates.page(workplace, now, bottle, report, bottle.latest(), form));
    }

    /** The verdict on what was wished for, or on the bottle alone when that could not be read. */
    private FitnessReport report(BenchNow now, Bottle bottle, Map<String, String> typed) {
        Reader reader = reader(now, typed);
        StatedPressure reads = reader.pressureIfTyped("before");
        StatedPressure target = reader.pressureIfTyped("target");
        if (reads == null || target == null) {
            return workplace.benches().judgingFitness().ofBottle(now.id(), bottle.id());
        }
        Reading before = now.reading(reads, reader.temperatureIfTyped("temperature"));
        return workplace.benches().judgingFitness().forFill(now.id(), bottle.id(), target, before);
    }

    private static void who(Reader reader, BenchNow now) {
        reader.required(Sender.WHO, "fault.who");
        if (!Sender.of(reader.form().typed()).hasKey()) {
            reader.fault("form", now.words().of("fault.key"));
        }
    }

    private static @Nullable Answer answer(String word) {
        for (Answer answer : Answer.values()) {
            if (answer.name().toLowerCase(Locale.ROOT).replace('_', '-').equals(word)) {
                return answer;
            }
        }
        return null;
    }

    private KeepingMarkings keeping() {
        return workplace.benches().keepingMarkings();
    }

    private static Submission submission(Map<String, String> typed) {
        return Sender.of(typed).submission();
    }

    private static Reader reader(BenchNow now, Map<String, String> typed) {
        return new Reader(typed, now.bench().settings().units(), now.words());
    }

    private static Bottle bottle(BenchNow now, Map<String, String> typed) {
        String id = typed.getOrDefault("bottle", "");
        return now.bench().listBottles().stream()
                .filter(bottle -> bottle.id().value().equals(id))
                .findFirst()
                .orElseThrow(() -> new NoSuchThing("bottle " + id));
    }
}
