package org.lowfirst.web.session;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.lowfirst.gas.Amount;
import org.lowfirst.planning.session.BottleEnd;
import org.lowfirst.planning.session.HabitResult;
import org.lowfirst.planning.session.Readiness;
import org.lowfirst.planning.session.SessionPlan;
import org.lowfirst.planning.session.SessionStep;
import org.lowfirst.station.Bottle;
import org.lowfirst.transfer.Ending;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.picture.SessionPicture;
import org.lowfirst.web.session.SessionPage.EndLine;
import org.lowfirst.web.session.SessionPage.HabitLine;
import org.lowfirst.web.session.SessionPage.SessionSheet;
import org.lowfirst.web.session.SessionPage.StepLine;
import org.lowfirst.web.words.Words;
import org.lowfirst.web.workplace.BenchNow;

/** Writes a session for people. */
final class SessionWriter {

    private final BenchNow now;
    private final Words words;
    private final Figures figures;
    private final Map<String, Bottle> byName = new HashMap<>();
    private final String temperature;

    /** @param temperature as it was typed, for the fills started from here */
    SessionWriter(BenchNow now, List<Bottle> chosen, String temperature) {
        this.now = now;
        this.words = now.words();
        this.figures = now.figures();
        this.temperature = temperature;
        chosen.forEach(bottle -> byName.put(bottle.details().name(), bottle));
    }

    SessionSheet sheet(SessionPlan plan, boolean cutOff) {
        int bottles = plan.request().bottles().size();
        List<StepLine> steps = new ArrayList<>();
        for (SessionStep step : plan.course().steps()) {
            steps.add(step(step, steps.size() + 1));
        }
        return new SessionSheet(
                words.of("session.ready", plan.score().ready(), bottles),
                plan.score().ready() == bottles,
                words.of("session.full", plan.score().full()),
                clock(plan.score().time_s()),
                words.count("session.changes", plan.score().changes()),
                picture(plan).draw(),
                steps,
                plan.course().ends().stream().map(this::end).toList(),
                habits(plan),
                plan.notes(now.shownUnits()),
                plan.course().bankAfter().stream()
                        .map(supply -> words.of(
                                "session.after.supply",
                                supply.rank(),
                                supply.name(),
                                figures.pressureWithUnit(supply.reading())))
                        .collect(Collectors.joining(", ")),
                cutOff);
    }

    private StepLine step(SessionStep step, int number) {
        String ends = step.ends() == Ending.TARGET
                ? words.of(
                        "session.step.target",
                        figures.pressureWithUnit(step.bottleReading().after()))
                : words.of(
                        "session.step.equal",
                        figures.pressureWithUnit(step.bottleReading().after()));
        return new StepLine(
                number,
                clock(step.start_s()),
                words.of("session.step", step.bottle(), step.supply()),
                words.of(
                        "session.step.rise",
                        figures.pressure(step.bottleReading().before()),
                        figures.pressure(step.bottleReading().after()),
                        figures.pressure(step.supplyReading().before()),
                        figures.pressure(step.supplyReading().after()),
                        figures.pressureUnit()),
                ends,
                link(step));
    }

    /** The stage as a fill of its own, so that the guide opens just this supply. */
    private String link(SessionStep step) {
        String before = figures.toType(step.bottleReading().before());
        String target = figures.toTypeBelow(step.bottleReading().after());
        Bottle bottle = byName.get(step.bottle());
        if (bottle == null || Double.parseDouble(target) <= Double.parseDouble(before)) {
            return "";
        }
        String link = "/fill/plan?bottle=" + bottle.id() + "&before=" + before + "&target=" + target;
        return now.place()
                .path(
                        temperature.isEmpty()
                                ? link
                                : link + "&temperature=" + URLEncoder.encode(temperature, StandardCharsets.UTF_8));
    }

    private EndLine end(BottleEnd end) {
        String key =
                "session.end." + end.readiness().name().toLowerCase(Locale.ROOT).replace('_', '-');
        return new EndLine(
                end.name(),
                words.of(key, figures.pressureWithUnit(end.reading()), figures.pressureWithUnit(end.stop())),
                end.readiness() != Readiness.NOT_READY);
    }

    private List<HabitLine> habits(SessionPlan plan) {
        List<HabitLine> lines = new ArrayList<>();
        lines.add(habit("session.habit.plan", plan.score().ready(), plan.score().gasLeft()));
        for (HabitResult habit : plan.advice().habits()) {
            lines.add(habit(
                    "session.habit."
                            + habit.habit().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                    habit.ready(),
                    habit.gasLeft()));
        }
        return lines;
    }

    private HabitLine habit(String key, int ready, Amount left) {
        return new HabitLine(words.of(key), Integer.toString(ready), now.gas(left));
    }

    private SessionPicture picture(SessionPlan plan) {
        List<String> supplies = new ArrayList<>();
        plan.course().bankAfter().forEach(supply -> supplies.add(supply.name()));
        List<String> inUse = plan.course().steps().stream()
                .map(SessionStep::supply)
                .distinct()
                .toList();
        List<SessionPicture.Cell> cells = new ArrayList<>();
        int number = 0;
        for (SessionStep step : plan.course().steps()) {
            number++;
            cells.add(new SessionPicture.Cell(
                    step.bottle(),
                    step.supply(),
                    number,
                    figures.pressure(step.bottleReading().after()),
                    step.ends() == Ending.TARGET));
        }
        List<SessionPicture.Row> rows = plan.course().ends().stream()
                .map(end -> new SessionPicture.Row(
                        end.name(), figures.pressure(end.reading()), end.readiness() != Readiness.NOT_READY))
                .toList();
        supplies.retainAll(inUse);
        return new SessionPicture(
                rows,
                supplies,
                cells,
                new SessionPicture.Wording(
                        words.of(
                                "session.picture",
                                plan.score().ready(),
                                plan.request().bottles().size(),
                                plan.course().steps().size()),
                        words.of("session.picture.ends", figures.pressureUnit())));
    }

    private static String clock(double seconds) {
        long minutes = Math.round(seconds / 60.0);
        return String.format(Figures.LOCALE, "%d:%02d", minutes / 60, minutes % 60);
    }
}
