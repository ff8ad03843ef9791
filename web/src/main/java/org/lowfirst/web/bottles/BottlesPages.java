package org.lowfirst.web.bottles;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.fitness.FitnessReport;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.BottleStatus;
import org.lowfirst.station.Reading;
import org.lowfirst.station.WaterVolume;
import org.lowfirst.web.bottles.BottlesPage.Line;
import org.lowfirst.web.gate.FitTag;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;

/** Lists the bottles. */
@Controller
public final class BottlesPages {

    private final Workplace workplace;

    public BottlesPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/bottles")
    View list(@PathVariable String bench) {
        BenchNow now = workplace.open(bench);
        Map<BottleId, FitTag> fits = workplace.benches().judgingFitness().list(now.id()).stream()
                .collect(Collectors.toMap(FitnessReport::bottle, FitTag::of));
        List<Line> lines = workplace.benches().registeringBottles().listBottles(now.id()).stream()
                .map(bottle -> line(bottle, fits.get(bottle.id()), now))
                .toList();
        return workplace.screens().show(new BottlesPage(now.place(), lines));
    }

    private static Line line(Bottle bottle, @Nullable FitTag fit, BenchNow now) {
        BottleDetails details = bottle.details();
        WaterVolume volume = details.waterVolume();
        @Nullable Reading latest = bottle.latest();
        return new Line(
                bottle.id().value(),
                details.name(),
                details.owner(),
                now.words()
                        .of(
                                "bottle.size",
                                now.figures().asTyped(volume.stated()),
                                now.figures().asTyped(details.servicePressure())),
                now.words()
                        .of(
                                "basis." + volume.basis().name().toLowerCase(Locale.ROOT),
                                volume.source() == null ? "" : volume.source()),
                latest == null
                        ? ""
                        : now.words()
                                .of(
                                        "bottle.latest",
                                        now.figures()
                                                .pressureWithUnit(
                                                        latest.pressure().gauge()),
                                        now.age(latest.at())),
                bottle.status() == BottleStatus.RETIRED,
                fit);
    }
}
