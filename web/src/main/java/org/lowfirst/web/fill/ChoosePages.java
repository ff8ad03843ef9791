package org.lowfirst.web.fill;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.fitness.FitnessReport;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.BottleStatus;
import org.lowfirst.station.Reading;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.fill.ChoosePage.Choice;
import org.lowfirst.web.gate.FitTag;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;

/** Asks which bottle to fill. */
@Controller
public final class ChoosePages {

    /** A bottle that came while the page was made. */
    private static final FitTag UNKNOWN = new FitTag("ask", "");

    private final Workplace workplace;

    public ChoosePages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/fill")
    View choose(@PathVariable String bench) {
        BenchNow now = workplace.open(bench);
        Map<BottleId, FitTag> fits = workplace.benches().judgingFitness().list(now.id()).stream()
                .collect(Collectors.toMap(FitnessReport::bottle, FitTag::of));
        List<Choice> bottles = workplace.benches().registeringBottles().listBottles(now.id()).stream()
                .filter(bottle -> bottle.status() == BottleStatus.IN_USE)
                .map(bottle -> choice(bottle, fits.getOrDefault(bottle.id(), UNKNOWN), now))
                .toList();
        String underWay = now.bench()
                .sessions()
                .findOpen()
                .map(session -> now.place().path("/session/now"))
                .or(() -> now.bench().openFill().map(fill -> now.place().path("/fill/" + fill.id())))
                .orElse("");
        return workplace
                .screens()
                .show(new ChoosePage(
                        now.place(), bottles, underWay, now.bench().bank().isEmpty()));
    }

    private static Choice choice(Bottle bottle, FitTag fit, BenchNow now) {
        Figures figures = now.figures();
        @Nullable Reading latest = bottle.latest();
        return new Choice(
                now.place().path("/fill/plan?bottle=" + bottle.id()),
                bottle.details().name(),
                now.words()
                        .of(
                                "bottle.size",
                                figures.asTyped(bottle.details().waterVolume().stated()),
                                figures.asTyped(bottle.details().servicePressure())),
                latest == null
                        ? ""
                        : now.words()
                                .of(
                                        "bottle.latest",
                                        figures.pressureWithUnit(
                                                latest.pressure().gauge()),
                                        now.age(latest.at())),
                fit);
    }
}
