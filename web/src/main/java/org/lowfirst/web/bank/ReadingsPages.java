package org.lowfirst.web.bank;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.bench.SupplyView;
import org.lowfirst.app.honest.CylinderNow;
import org.lowfirst.app.honest.ReadingHistory;
import org.lowfirst.station.Command.TakeReading;
import org.lowfirst.station.GaugeDetails;
import org.lowfirst.station.GaugeUse;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.web.bank.ReadingsPage.Row;
import org.lowfirst.web.bank.ReadingsPage.UnitWords;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.verdict.Standing;
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

/** Takes what the gauges of the bank show. */
@Controller
public final class ReadingsPages {

    private final Workplace workplace;

    public ReadingsPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/readings")
    View ask(@PathVariable String bench) {
        BenchNow now = workplace.open(bench);
        return workplace.screens().show(page(now, supplies(now), Form.blank(), List.of()));
    }

    @PostMapping("/at/{bench}/readings")
    View take(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        List<SupplyView> supplies = supplies(now);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        @Nullable StatedTemperature temperature = reader.temperatureIfTyped("temperature");
        reader.required(Sender.WHO, "fault.who");
        List<Typed> readings = new ArrayList<>();
        for (SupplyView supply : supplies) {
            @Nullable StatedPressure pressure = reader.pressureIfTyped(field(supply));
            if (pressure != null) {
                readings.add(new Typed(supply, pressure));
            }
        }
        if (supplies.isEmpty()) {
            return Redirects.to(now.place().path("/bank"));
        }
        if (readings.isEmpty() && reader.form().sound()) {
            reader.fault(field(supplies.get(0)), now.words().of("readings.none"));
        }
        if (!reader.form().sound()) {
            return workplace.screens().refused(page(now, supplies, reader.form(), List.of()));
        }
        return record(now, supplies, readings, temperature, reader.form());
    }

    private View record(
            BenchNow now,
            List<SupplyView> supplies,
            List<Typed> readings,
            @Nullable StatedTemperature temperature,
            Form typed) {
        Sender sender = Sender.of(typed.typed());
        Form form = typed;
        List<String> saved = new ArrayList<>();
        long last = 0;
        for (Typed reading : readings) {
            Recording recording = workplace
                    .benches()
                    .takingReadings()
                    .take(
                            now.id(),
                            new TakeReading(
                                    reading.supply().supply().id(),
                                    now.reading(reading.pressure(), temperature, gauge(now, typed))),
                            sender.submission(reading.supply().supply().id().value()));
            String fault = workplace.fault(recording);
            String field = field(reading.supply());
            if (fault.isEmpty()) {
                saved.add(reading.supply().supply().details().name());
                form = form.filled(field, "");
                last = Answers.entry(recording).orElse(last);
            } else {
                form = form.faulting(field, fault);
                form = Answers.confirmable(recording) ? form.filled(Form.CONFIRMABLE, "yes") : form;
            }
        }
        return form.sound()
                ? Redirects.saved(now.place().path("/bank"), last, sender.who())
                : workplace.screens().refused(page(now, supplies, form, saved));
    }

    private ReadingsPage page(BenchNow now, List<SupplyView> supplies, Form form, List<String> saved) {
        Figures figures = now.figures();
        ReadingHistory history = workplace.benches().judgingReadings().history(now.id());
        List<Row> rows = supplies.stream()
                .map(view -> new Row(
                        field(view), view.rank(), view.supply().details().name(), expected(now, history, view)))
                .toList();
        String usual = figures.temperature(
                now.bench().settings().surroundings().usualTemperature().temperature());
        UnitWords unit = new UnitWords(figures.pressureUnit(), figures.temperatureUnit());
        return new ReadingsPage(
                now.place(),
                rows,
                gauges(now),
                usual,
                unit,
                form,
                workplace.ids().next(),
                saved);
    }

    private static String expected(BenchNow now, ReadingHistory history, SupplyView view) {
        String reading = now.figures().pressureWithUnit(view.estimate());
        return history.find(view.supply().id())
                .map(CylinderNow::showsWithin)
                .map(within -> Standing.spread(now, reading, within))
                .orElse(reading);
    }

    /** Gauges that may have been read besides the one usually read on supplies. */
    private static List<String> gauges(BenchNow now) {
        boolean usual = now.bench().gauges().values().stream().anyMatch(gauge -> gauge.use() == GaugeUse.SUPPLIES);
        List<String> names = now.bench().gauges().values().stream()
                .filter(gauge -> gauge.use() != GaugeUse.BOTTLES)
                .map(GaugeDetails::name)
                .toList();
        return names.size() > (usual ? 1 : 0) ? names : List.of();
    }

    private static @Nullable String gauge(BenchNow now, Form typed) {
        String name = typed.value("gauge");
        return gauges(now).contains(name) ? name : null;
    }

    private List<SupplyView> supplies(BenchNow now) {
        return workplace.benches().keepingTheBank().bank(now.id()).supplies();
    }

    private static String field(SupplyView view) {
        return "reading-" + view.supply().id();
    }

    private record Typed(SupplyView supply, StatedPressure pressure) {}
}
