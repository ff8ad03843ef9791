package org.lowfirst.web.temperatures;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.honest.AskingOtherTemperatures;
import org.lowfirst.app.honest.Outcome;
import org.lowfirst.app.honest.Problem;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.planning.warm.ReadingAt;
import org.lowfirst.planning.warm.SameGas;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.CylinderId;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.SupplyId;
import org.lowfirst.web.cylinder.CylinderChoice;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.temperatures.TemperaturesPage.Row;
import org.lowfirst.web.temperatures.TemperaturesPage.Sheet;
import org.lowfirst.web.temperatures.TemperaturesPage.UnitWords;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;

/** Reads the same gas at other temperatures. Enters nothing. */
@Controller
public final class TemperaturesPages {

    private static final Map<String, String> FIELDS = Map.of(
            "reading", "reading",
            "temperature of the gas", "temperature",
            "temperature to read at", "to");

    private final Workplace workplace;

    public TemperaturesPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/temperatures")
    View ask(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        @Nullable
        CylinderId cylinder =
                CylinderChoice.find(now, typed.getOrDefault("cylinder", "")).orElse(null);
        if (!typed.containsKey("reading")) {
            return workplace.screens().show(page(now, filled(now, typed, cylinder), null));
        }
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        @Nullable StatedPressure reading = reader.pressure("reading");
        @Nullable StatedTemperature gas = reader.gasTemperatureIfTyped("temperature");
        @Nullable StatedTemperature to = reader.gasTemperatureIfTyped("to");
        if (reading == null || !reader.form().sound()) {
            return workplace.screens().refused(page(now, reader.form(), null));
        }
        Temperature behind = gas == null ? usual(now) : gas.temperature();
        return answer(now, cylinder, reading.gauge(), behind, to == null ? null : to.temperature(), reader);
    }

    private View answer(
            BenchNow now,
            @Nullable CylinderId cylinder,
            GaugePressure reading,
            Temperature gas,
            @Nullable Temperature to,
            Reader reader) {
        List<Temperature> at = temperatures(now, gas, to);
        Outcome<SameGas> outcome = asking().ask(now.id(), cylinder, reading, gas, at);
        if (outcome instanceof Outcome.Given<SameGas> given) {
            Sheet sheet = sheet(now, cylinder, reading, gas, to, given.value());
            return workplace.screens().show(page(now, reader.form(), sheet));
        }
        Problem problem = ((Outcome.Declined<SameGas>) outcome).problem();
        String field = problem.about() == null ? "form" : FIELDS.getOrDefault(problem.about(), "form");
        reader.fault(field, problem.sentence() + " " + problem.advice());
        return workplace.screens().refused(page(now, reader.form(), null));
    }

    private Sheet sheet(
            BenchNow now,
            @Nullable CylinderId cylinder,
            GaugePressure reading,
            Temperature gas,
            @Nullable Temperature to,
            SameGas same) {
        Figures figures = now.figures();
        List<ReadingAt> full = full(now, cylinder, same);
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < same.readings().size(); i++) {
            ReadingAt row = same.readings().get(i);
            boolean asked = row.temperature().equals(to) || row.temperature().equals(gas);
            rows.add(new Row(
                    figures.temperature(row.temperature()),
                    figures.pressureWithUnit(row.reading()),
                    full.isEmpty() ? "" : figures.pressureWithUnit(full.get(i).reading()),
                    asked));
        }
        String said = now.words().of("temperatures.said", figures.pressureWithUnit(reading), figures.temperature(gas));
        return new Sheet(said, fullness(now, same), rows, !full.isEmpty());
    }

    /** What a full one shows at the same temperatures; empty without a cylinder. */
    private List<ReadingAt> full(BenchNow now, @Nullable CylinderId cylinder, SameGas same) {
        if (cylinder == null) {
            return List.of();
        }
        StatedPressure marked = cylinder instanceof SupplyId supply
                ? now.bench().getSupply(supply).details().servicePressure()
                : now.bench().getBottle((BottleId) cylinder).details().servicePressure();
        List<Temperature> at =
                same.readings().stream().map(ReadingAt::temperature).toList();
        return asking().ask(now.id(), null, marked.gauge(), reference(now), at) instanceof Outcome.Given<SameGas> given
                ? given.value().readings()
                : List.of();
    }

    private static String fullness(BenchNow now, SameGas same) {
        SameGas.@Nullable Fullness full = same.full();
        SameGas.@Nullable Contents contents = same.contents();
        return full == null || contents == null
                ? ""
                : now.words()
                        .of(
                                "temperatures.full",
                                now.figures().gas(contents.freeVolume()),
                                String.format(Figures.LOCALE, "%.0f", full.percent()),
                                now.figures().temperature(reference(now)),
                                now.figures().pressureWithUnit(full.atReference()));
    }

    /** Through the year, where the marking counts, here, and what was asked; coldest first. */
    private static List<Temperature> temperatures(BenchNow now, Temperature gas, @Nullable Temperature to) {
        TemperatureUnit unit = now.bench().settings().units().temperature();
        boolean fahrenheit = unit == TemperatureUnit.FAHRENHEIT;
        TreeSet<Temperature> all = new TreeSet<>();
        for (int step = 0; step < 7; step++) {
            all.add(Temperature.of(-20.0 + step * (fahrenheit ? 20.0 : 10.0), unit));
        }
        all.add(reference(now));
        all.add(gas);
        if (to != null) {
            all.add(to);
        }
        return List.copyOf(all);
    }

    private static Temperature reference(BenchNow now) {
        return now.bench().settings().rules().figures().referenceTemperature().temperature();
    }

    private static Temperature usual(BenchNow now) {
        return now.bench().settings().surroundings().usualTemperature().temperature();
    }

    /** The latest reading of a cylinder that was come from. */
    private static Form filled(BenchNow now, Map<String, String> typed, @Nullable CylinderId cylinder) {
        Map<String, String> fields = new HashMap<>(typed);
        @Nullable Reading latest = null;
        if (cylinder instanceof SupplyId supply) {
            latest = now.bench().getSupply(supply).latest();
        } else if (cylinder instanceof BottleId bottle) {
            latest = now.bench().getBottle(bottle).latest();
        }
        if (latest != null) {
            fields.putIfAbsent("reading", now.figures().toType(latest.pressure()));
            if (!latest.temperatureAssumed()) {
                StatedTemperature stated = latest.temperature();
                fields.putIfAbsent("temperature", now.figures().toType(stated));
            }
        }
        return Form.with(fields);
    }

    private static TemperaturesPage page(BenchNow now, Form form, @Nullable Sheet sheet) {
        UnitWords unit = new UnitWords(
                now.figures().pressureUnit(),
                now.figures().temperatureUnit(),
                now.figures().temperature(usual(now)));
        return new TemperaturesPage(now.place(), CylinderChoice.list(now), unit, form, sheet);
    }

    private AskingOtherTemperatures asking() {
        return workplace.benches().askingOtherTemperatures();
    }
}
