package org.lowfirst.web.twoopen;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.bench.SupplyView;
import org.lowfirst.app.bench.TwoOpenReport;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.station.Command.RecordTwoOpenTogether;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Rule;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.Supply;
import org.lowfirst.station.SupplyId;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.twoopen.TwoOpenReportPage.Line;
import org.lowfirst.web.view.NoSuchThing;
import org.lowfirst.web.view.Redirects;
import org.lowfirst.web.words.Words;
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

/** Enters that two valves were open together, and says what it cost. */
@Controller
public final class TwoOpenPages {

    private final Workplace workplace;

    public TwoOpenPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/two-open")
    View ask(@PathVariable String bench) {
        BenchNow now = workplace.open(bench);
        return workplace.screens().show(page(now, Form.blank()));
    }

    @PostMapping("/at/{bench}/two-open")
    View enter(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        @Nullable SupplyId first = supply(now, reader, "first");
        @Nullable SupplyId second = supply(now, reader, "second");
        if (first != null && first.equals(second)) {
            reader.fault("second", now.words().of("two-open.same"));
        }
        @Nullable StatedTemperature temperature = reader.temperatureIfTyped("temperature");
        @Nullable Reading firstAfter = reading(now, reader, "first-after", first, temperature);
        @Nullable Reading secondAfter = reading(now, reader, "second-after", second, temperature);
        reader.required(Sender.WHO, "fault.who");
        Sender sender = Sender.of(typed);
        if (!sender.hasKey()) {
            reader.fault("form", now.words().of("fault.key"));
        }
        if (first == null || second == null || !reader.form().sound()) {
            return workplace.screens().refused(page(now, reader.form()));
        }
        Recording recording = workplace
                .benches()
                .keepingTheBank()
                .recordTwoOpenTogether(
                        now.id(),
                        new RecordTwoOpenTogether(first, second, firstAfter, secondAfter),
                        sender.submission());
        String fault = workplace.fault(recording);
        if (!fault.isEmpty()) {
            boolean inGauge = Answers.rule(recording)
                            .filter(rule -> rule != Rule.SUPPLY_NAMED_TWICE)
                            .isPresent()
                    && firstAfter != null;
            Form form = reader.form().faulting(inGauge ? "first-after" : "form", fault);
            return workplace
                    .screens()
                    .refused(page(now, Answers.confirmable(recording) ? form.filled(Form.CONFIRMABLE, "yes") : form));
        }
        long entry = Answers.entry(recording).orElse(0L);
        return Redirects.saved(now.place().path("/two-open/" + entry), entry, sender.who());
    }

    @GetMapping("/at/{bench}/two-open/{seq}")
    View report(@PathVariable String bench, @PathVariable long seq) {
        BenchNow now = workplace.open(bench);
        TwoOpenReport report = workplace
                .benches()
                .weighingTwoOpen()
                .findReport(now.id(), seq)
                .orElseThrow(() -> new NoSuchThing("two supplies open together, entry " + seq));
        return workplace.screens().show(page(now, seq, report));
    }

    private static TwoOpenReportPage page(BenchNow now, long seq, TwoOpenReport report) {
        Figures figures = now.figures();
        Words words = now.words();
        String first = name(now, report.fact().first());
        String second = name(now, report.fact().second());
        @Nullable Reading firstAfter = report.fact().firstAfter();
        @Nullable Reading secondAfter = report.fact().secondAfter();
        return new TwoOpenReportPage(
                now.place(),
                seq,
                words.of("two-open.names", first, second),
                figures.pressureUnit(),
                figures.pressure(report.level()),
                List.of(
                        line(now, first, report.firstBefore(), report.firstNow(), firstAfter),
                        line(now, second, report.secondBefore(), report.secondNow(), secondAfter)),
                words.of("two-open.moved", now.gas(report.moved()), now.gasCondition()),
                cost(now, report.cost()));
    }

    private static Line line(
            BenchNow now, String name, GaugePressure before, GaugePressure since, @Nullable Reading read) {
        return new Line(
                name,
                now.figures().pressureWithUnit(before),
                now.figures().pressureWithUnit(since),
                now.words().of(read == null ? "two-open.reckoned" : "two-open.read"));
    }

    private static List<String> cost(BenchNow now, TwoOpenReport.@Nullable Cost cost) {
        if (cost == null) {
            return List.of();
        }
        Words words = now.words();
        Figures figures = now.figures();
        List<String> said = new ArrayList<>();
        said.add(words.of(
                "two-open.lost",
                now.gas(cost.lost()),
                figures.pressureWithUnit(cost.usual().target().gauge())));
        said.add(words.of(
                "two-open.fills",
                figures.asTyped(cost.usual().bottle().details().waterVolume().stated()),
                figures.pressure(cost.usual().found().gauge()),
                figures.pressureWithUnit(cost.usual().target().gauge()),
                cost.before().fills().inWords(now.shownUnits()),
                cost.after().fills().inWords(now.shownUnits())));
        return said;
    }

    private TwoOpenPage page(BenchNow now, Form form) {
        List<SupplyView> supplies =
                workplace.benches().keepingTheBank().bank(now.id()).supplies();
        return new TwoOpenPage(
                now.place(),
                supplies.stream()
                        .map(view -> new TwoOpenPage.Choice(
                                view.supply().id().value(),
                                now.words()
                                        .of(
                                                "two-open.choice",
                                                view.rank(),
                                                view.supply().details().name(),
                                                now.figures().pressureWithUnit(view.estimate()))))
                        .toList(),
                now.figures().pressureUnit(),
                now.figures().temperatureUnit(),
                now.figures()
                        .temperature(now.bench()
                                .settings()
                                .surroundings()
                                .usualTemperature()
                                .temperature()),
                form,
                workplace.ids().next());
    }

    private static @Nullable SupplyId supply(BenchNow now, Reader reader, String field) {
        Optional<SupplyId> chosen = now.bench().bank().stream()
                .map(Supply::id)
                .filter(id -> id.value().equals(reader.text(field)))
                .findFirst();
        if (chosen.isEmpty()) {
            reader.fault(field, now.words().of("two-open.choose"));
        }
        return chosen.orElse(null);
    }

    private static @Nullable Reading reading(
            BenchNow now,
            Reader reader,
            String field,
            @Nullable SupplyId supply,
            @Nullable StatedTemperature temperature) {
        @Nullable StatedPressure pressure = reader.pressureIfTyped(field);
        if (pressure == null) {
            return null;
        }
        if (supply != null) {
            now.offScale(supply, pressure).ifPresent(fault -> reader.fault(field, fault));
        }
        return now.reading(pressure, temperature);
    }

    private static String name(BenchNow now, SupplyId id) {
        return now.bench().findSupply(id).map(supply -> supply.details().name()).orElse(id.value());
    }
}
