package org.lowfirst.web.session;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.JudgingFitness;
import org.lowfirst.app.fitness.FitnessReport;
import org.lowfirst.app.outlook.BenchToday;
import org.lowfirst.planning.PlanRefused;
import org.lowfirst.planning.session.SessionBottle;
import org.lowfirst.planning.session.SessionOutcome;
import org.lowfirst.planning.session.SessionPace;
import org.lowfirst.planning.session.SessionPlan;
import org.lowfirst.planning.session.SessionPlanner;
import org.lowfirst.planning.session.SessionRefused;
import org.lowfirst.planning.session.SessionRequest;
import org.lowfirst.planning.session.SessionWatch;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.session.SessionPage.SessionSheet;
import org.lowfirst.web.view.Redirects;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;

/** Plans several bottles on the bank as it stands. Enters nothing. */
@Controller
public final class SessionPages {

    /** Somebody waits with a bottle in hand; how far the search is is shown then. */
    private static final Duration AT_FIRST = Duration.ofMillis(1500);

    /** A search that is asked to end does so within moments. */
    private static final Duration TO_END = Duration.ofSeconds(5);

    private static final String ENOUGH = "enough";

    private final Workplace workplace;
    private final SessionDesk desk = new SessionDesk();

    public SessionPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/session")
    View session(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        if (now.bench().sessions().findOpen().isPresent()) {
            return Redirects.to(now.place().path("/session/now"));
        }
        List<Bottle> chosen = SessionFields.chosen(now, typed);
        if (chosen.isEmpty() || typed.containsKey("choose")) {
            return choose(now, typed);
        }
        if (!typed.containsKey("plan")) {
            return workplace
                    .screens()
                    .show(page(now, chosen, Form.with(SessionFields.filled(now, chosen, typed)), null));
        }
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        @Nullable StatedTemperature temperature = reader.temperatureIfTyped("temperature");
        List<SessionBottle> bottles = SessionFields.read(reader, now, chosen);
        unfit(now, chosen).ifPresent(name -> reader.fault("form", now.words().of("rule.bottle_unfit", name)));
        if (!reader.form().sound()) {
            return workplace.screens().refused(page(now, chosen, reader.form(), null));
        }
        BenchToday today = workplace
                .benches()
                .askingAhead()
                .today(now.id(), temperature == null ? null : temperature.temperature());
        return planned(now, chosen, reader, today, bottles);
    }

    /** Name of the first bottle that is refused whatever is seen of it today. */
    private Optional<String> unfit(BenchNow now, List<Bottle> chosen) {
        JudgingFitness judging = workplace.benches().judgingFitness();
        return chosen.stream()
                .map(bottle -> judging.beforeReading(now.id(), bottle.id()))
                .filter(report -> report.word().refused())
                .map(FitnessReport::name)
                .findFirst();
    }

    private View planned(
            BenchNow now, List<Bottle> chosen, Reader reader, BenchToday today, List<SessionBottle> bottles) {
        Map<String, String> typed = reader.form().typed();
        SessionDesk.Question question = new SessionDesk.Question(
                now.id().value(),
                now.bench().settings(),
                reader.text("temperature"),
                new SessionRequest(
                        today.bank(),
                        bottles,
                        SessionFields.order(typed),
                        SessionPace.UNHURRIED,
                        now.bench().settings().fullSupply().gauge()));
        boolean enough = typed.containsKey(ENOUGH);
        SessionSearch search = desk.search(question, SessionPlanner.under(today.conditions()), enough);
        if (enough) {
            search.stop();
        }
        if (!search.doneWithin(enough ? TO_END : AT_FIRST)) {
            return workplace.screens().show(searching(now, typed, search));
        }
        SessionOutcome outcome = search.outcome();
        if (outcome instanceof SessionPlan plan) {
            SessionSheet sheet = new SessionWriter(now, chosen, reader.text("temperature"))
                    .sheet(plan, plan.proof().stopped());
            return workplace.screens().show(page(now, chosen, reader.form(), sheet));
        }
        PlanRefused why = ((SessionRefused) outcome).why();
        reader.fault(SessionFields.fieldOf(why, chosen), why.inWords(now.shownUnits()));
        return workplace.screens().refused(page(now, chosen, reader.form(), null));
    }

    private static SessionSearchPage searching(BenchNow now, Map<String, String> typed, SessionSearch search) {
        Map<String, String> again = new TreeMap<>(typed);
        again.remove(ENOUGH);
        String address = now.place().path("/session?" + query(again));
        SessionWatch.SoFar soFar = search.soFar();
        String progress = soFar.readyAtMost() == 0
                ? now.words().of("session.searching.begun")
                : now.words()
                        .of(
                                "session.searching.so-far",
                                now.figures().number((double) soFar.ready(), 0),
                                now.figures().number((double) soFar.readyAtMost(), 0));
        return new SessionSearchPage(now.place(), address, address + "&" + ENOUGH + "=1", progress);
    }

    private static String query(Map<String, String> typed) {
        return typed.entrySet().stream()
                .map(field -> URLEncoder.encode(field.getKey(), StandardCharsets.UTF_8) + "="
                        + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }

    private View choose(BenchNow now, Map<String, String> typed) {
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        boolean nothing = typed.containsKey("next");
        if (nothing) {
            reader.fault("form", now.words().of("fault.session.none"));
        }
        List<SessionPage.Line> bottles = now.bench().listBottles().stream()
                .filter(Bottle::inUse)
                .map(bottle -> line(bottle, now))
                .toList();
        SessionPage page = new SessionPage(
                now.place(),
                true,
                bottles,
                now.figures().pressureUnit(),
                "",
                reader.form(),
                "",
                now.bench().bank().isEmpty(),
                null);
        return nothing ? workplace.screens().refused(page) : workplace.screens().show(page);
    }

    private SessionPage page(BenchNow now, List<Bottle> chosen, Form form, @Nullable SessionSheet sheet) {
        return page(now, chosen, form, workplace.ids().next(), sheet);
    }

    static SessionPage page(BenchNow now, List<Bottle> chosen, Form form, String key, @Nullable SessionSheet sheet) {
        return new SessionPage(
                now.place(),
                false,
                chosen.stream().map(bottle -> line(bottle, now)).toList(),
                now.figures().pressureUnit(),
                now.figures()
                        .temperature(now.bench()
                                .settings()
                                .surroundings()
                                .usualTemperature()
                                .temperature()),
                form,
                key,
                now.bench().bank().isEmpty(),
                sheet);
    }

    private static SessionPage.Line line(Bottle bottle, BenchNow now) {
        @Nullable Reading latest = bottle.latest();
        return new SessionPage.Line(
                bottle.id().value(),
                bottle.details().name(),
                now.words()
                        .of(
                                "bottle.size",
                                now.figures()
                                        .asTyped(bottle.details().waterVolume().stated()),
                                now.figures().asTyped(bottle.details().servicePressure())),
                latest == null
                        ? ""
                        : now.words()
                                .of("bottle.latest", now.figures().asTyped(latest.pressure()), now.age(latest.at())));
    }
}
