package org.lowfirst.web.study;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.outlook.AskingAhead;
import org.lowfirst.app.outlook.PastUse;
import org.lowfirst.app.study.StudyCsv;
import org.lowfirst.planning.study.Objection;
import org.lowfirst.planning.study.StudyRequest;
import org.lowfirst.planning.study.Studying;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.kept.Defaults;
import org.lowfirst.web.kept.KeepPart;
import org.lowfirst.web.objection.ObjectionFields;
import org.lowfirst.web.view.NoSuchThing;
import org.lowfirst.web.view.Redirects;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Sender;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;

/** Asks for a study, runs it in the background and shows how far it is and what came of it. Enters nothing in the journal. */
@Controller
public final class StudyPages {

    private final Workplace workplace;
    private final StudyDesk desk;

    public StudyPages(Workplace workplace) {
        this.workplace = workplace;
        this.desk = new StudyDesk(workplace.clock());
    }

    @GetMapping("/at/{bench}/study")
    View ask(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        PastUse past = past(now);
        return workplace
                .screens()
                .show(page(now, past, Form.with(StudyFields.filled(now, past, typed, Defaults.of(now, workplace)))));
    }

    @PostMapping("/at/{bench}/study")
    View run(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        PastUse past = past(now);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        Sender sender = Sender.of(typed);
        if (!sender.hasKey()) {
            reader.fault("form", now.words().of("fault.key"));
        }
        AskingAhead asking = workplace.benches().askingAhead();
        @Nullable StudyRequest request = new StudyFields(reader, now).read(asking.today(now.id(), null), past);
        if (request != null) {
            Optional<Objection> objection = Studying.objection(request);
            objection.ifPresent(why ->
                    reader.fault(ObjectionFields.of(why, StudyFields.OBJECTIONS), why.inWords(now.shownUnits())));
        }
        if (request == null || !reader.form().sound()) {
            return workplace.screens().refused(page(now, past, reader.form()));
        }
        if (desk.find(bench, sender.key()).isEmpty()) {
            Map<String, String> again = new TreeMap<>(typed);
            again.remove("key");
            again.remove("_csrf");
            desk.take(new StudyRun(sender.key(), bench, again, request));
        }
        return Redirects.to(now.place().path("/study/" + sender.key()));
    }

    @GetMapping("/at/{bench}/study/{id:[A-Za-z0-9._-]+}")
    View show(@PathVariable String bench, @PathVariable String id) {
        BenchNow now = workplace.open(bench);
        StudyRun run = find(bench, id);
        return workplace
                .screens()
                .show(new StudyResultPage(
                        now.place(),
                        now.place().path("/study/" + id),
                        now.place().path("/study?" + query(run.typed())),
                        progress(now, run),
                        (int) (100
                                * run.runsDone()
                                / Math.max(1, run.request().extent().runs())),
                        run.result()
                                .map(result -> new StudyWriter(now, run.request()).sheet(result))
                                .orElse(null),
                        KeepPart.of(
                                now,
                                Defaults.of(now, workplace),
                                run.typed(),
                                StudyFields.FIGURES,
                                "/study/" + id,
                                workplace.ids().next())));
    }

    @PostMapping("/at/{bench}/study/{id:[A-Za-z0-9._-]+}/stop")
    View stop(@PathVariable String bench, @PathVariable String id) {
        BenchNow now = workplace.open(bench);
        find(bench, id).stop();
        return Redirects.to(now.place().path("/study/" + id));
    }

    @GetMapping("/at/{bench}/study/{id:[A-Za-z0-9_-]+}.csv")
    ResponseEntity<String> table(@PathVariable String bench, @PathVariable String id) {
        workplace.open(bench);
        String table =
                find(bench, id).result().map(StudyCsv::of).orElseThrow(() -> new NoSuchThing("result of study " + id));
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType("text/csv; charset=utf-8; header=present"))
                .header("Content-Disposition", "attachment; filename=\"lowfirst-study.csv\"")
                .body(table);
    }

    private StudyRun find(String bench, String id) {
        return desk.find(bench, id).orElseThrow(() -> new NoSuchThing("study " + id));
    }

    private String progress(BenchNow now, StudyRun run) {
        if (run.done()) {
            return "";
        }
        if (run.started().isEmpty()) {
            return now.words().of("study.waiting");
        }
        long runs = run.request().extent().runs();
        Duration gone = Duration.between(run.started().get(), now.now());
        long left_s = run.runsDone() == 0 ? -1 : gone.toSeconds() * (runs - run.runsDone()) / run.runsDone();
        String done = now.words()
                .of(
                        "study.progress",
                        now.figures().number((double) run.runsDone(), 0),
                        now.figures().number((double) runs, 0));
        return left_s < 0 ? done : done + " " + now.words().of("study.left", left_s + 1);
    }

    private StudyPage page(BenchNow now, PastUse past, Form form) {
        Defaults defaults = Defaults.of(now, workplace);
        return new StudyPage(
                now.place(),
                form,
                now.figures().pressureUnit(),
                past.tells()
                        ? now.words()
                                .of(
                                        "send-back.past",
                                        past.history().fills().size(),
                                        past.history().days(),
                                        now.figures().number(past.fillsPerYear(), 0))
                        : now.words().of("send-back.past.little"),
                StudyFields.FIGURES.entrySet().stream()
                        .collect(Collectors.toMap(Map.Entry::getKey, field -> defaults.hint(field.getValue()))),
                StudyFields.swing(now),
                desk.latest(now.id().value())
                        .map(run -> now.place().path("/study/" + run.id()))
                        .orElse(""),
                workplace.ids().next());
    }

    private PastUse past(BenchNow now) {
        ZoneId zone = workplace.clock().getZone();
        LocalDate today = now.now().atZone(zone).toLocalDate();
        return workplace.benches().askingAhead().past(now.id(), zone, today);
    }

    private static String query(Map<String, String> typed) {
        return new TreeMap<>(typed)
                .entrySet().stream()
                        .map(field -> URLEncoder.encode(field.getKey(), StandardCharsets.UTF_8) + "="
                                + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                        .collect(Collectors.joining("&"));
    }
}
