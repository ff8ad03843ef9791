package org.lowfirst.web.camp;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.outlook.AskingAhead;
import org.lowfirst.app.outlook.PastUse;
import org.lowfirst.planning.Chance;
import org.lowfirst.planning.ahead.Band;
import org.lowfirst.planning.camp.CampOption;
import org.lowfirst.planning.camp.CampOutcome;
import org.lowfirst.planning.camp.CampPlan;
import org.lowfirst.planning.camp.CampRequest;
import org.lowfirst.planning.camp.PlanningACamp;
import org.lowfirst.planning.study.Objection;
import org.lowfirst.station.AheadFigure;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.Supply;
import org.lowfirst.web.camp.CampPage.CampSheet;
import org.lowfirst.web.camp.CampPage.OptionLine;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.kept.Defaults;
import org.lowfirst.web.kept.KeepPart;
import org.lowfirst.web.objection.ObjectionFields;
import org.lowfirst.web.picture.BarsPicture;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;

/** Works out how many supplies a trip or camp needs. Enters nothing. */
@Controller
public final class CampPages {

    private static final Map<String, String> FIELDS = Map.of(
            "number of days", "days",
            "number of pilots", "pilots",
            "fills of a pilot on a day that is flown", "fills",
            "number of fills to be expected", "fills",
            "chance that a day is flown", "flyable",
            "chance wanted that every bottle can be finished", "chance",
            "water volume of the supplies", "volume",
            "reading of the supplies", "reading");

    /** Which field holds which figure of the bench. */
    private static final Map<String, AheadFigure> FIGURES = new TreeMap<>(Map.of(
            "fills", AheadFigure.FILLS_PER_PILOT,
            "flyable", AheadFigure.FLYABLE_PERCENT,
            "chance", AheadFigure.CHANCE_PERCENT));

    private static final long SEED = 1;
    private static final int MOST_LINES = 12;

    private final Workplace workplace;

    public CampPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/camp")
    View camp(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Defaults defaults = Defaults.of(now, workplace);
        Reader reader =
                new Reader(filled(now, typed, defaults), now.bench().settings().units(), now.words());
        @Nullable CampSheet sheet = typed.containsKey("days") ? sheet(now, reader) : null;
        CampPage page = new CampPage(
                now.place(),
                reader.form(),
                now.figures().pressureUnit(),
                now.figures().temperatureUnit(),
                sheet,
                sheet == null
                        ? null
                        : KeepPart.of(
                                now,
                                defaults,
                                reader.form().typed(),
                                FIGURES,
                                "/camp",
                                workplace.ids().next()));
        return reader.form().sound()
                ? workplace.screens().show(page)
                : workplace.screens().refused(page);
    }

    private static Map<String, String> filled(BenchNow now, Map<String, String> typed, Defaults defaults) {
        Map<String, String> fields = new HashMap<>(typed);
        fields.putIfAbsent("days", "7");
        fields.putIfAbsent("pilots", "6");
        defaults.fill(
                fields, "fills", AheadFigure.FILLS_PER_PILOT, now.figures().toType(new BigDecimal("0.5")));
        defaults.fill(fields, "flyable", AheadFigure.FLYABLE_PERCENT, "70");
        defaults.fill(fields, "chance", AheadFigure.CHANCE_PERCENT, "90");
        fields.putIfAbsent(
                "reading", now.figures().toType(now.bench().settings().fullSupply()));
        fields.putIfAbsent(
                "volume",
                now.bench().bank().stream()
                        .findFirst()
                        .map(Supply::details)
                        .map(details ->
                                now.figures().asTyped(details.waterVolume().stated()))
                        .orElse("50 L"));
        return fields;
    }

    private @Nullable CampSheet sheet(BenchNow now, Reader reader) {
        int days = whole(now, reader, "days");
        int pilots = whole(now, reader, "pilots");
        double fills = number(reader, "fills");
        double flyable = number(reader, "flyable") / 100.0;
        double chance = number(reader, "chance") / 100.0;
        @Nullable StatedVolume volume = reader.waterVolume("volume");
        @Nullable StatedPressure full = reader.pressure("reading");
        @Nullable StatedTemperature temperature = reader.temperatureIfTyped("temperature");
        AskingAhead asking = workplace.benches().askingAhead();
        ZoneId zone = workplace.clock().getZone();
        LocalDate today = now.now().atZone(zone).toLocalDate();
        PastUse past = asking.past(now.id(), zone, today);
        if (past.uses().isEmpty()) {
            reader.fault("form", now.words().of("fault.no-bottles"));
        }
        if (volume == null || full == null || !reader.form().sound()) {
            return null;
        }
        CampOutcome outcome = PlanningACamp.plan(new CampRequest(
                asking.today(now.id(), temperature == null ? null : temperature.temperature())
                        .conditions(),
                volume.volume(),
                full.gauge(),
                past.uses(),
                days,
                pilots,
                fills,
                flyable,
                chance,
                SEED));
        if (outcome instanceof CampPlan plan) {
            return sheet(now, plan);
        }
        Objection why = ((CampOutcome.Refused) outcome).why();
        reader.fault(ObjectionFields.of(why, FIELDS), why.inWords(now.shownUnits()));
        return null;
    }

    private static CampSheet sheet(BenchNow now, CampPlan plan) {
        List<CampOption> options = plan.options();
        List<CampOption> shown = options.subList(Math.max(0, options.size() - MOST_LINES), options.size());
        List<BarsPicture.Bar> bars = shown.stream()
                .map(option -> new BarsPicture.Bar(
                        now.words().count("camp.supplies", option.supplies()),
                        100 * option.chanceAll(),
                        100 * option.chanceAll(),
                        100 * option.chanceAll(),
                        percent(now, option),
                        100 * plan.chanceWanted(),
                        option.chanceAll() >= plan.chanceWanted()))
                .toList();
        String advice = plan.inWords(now.words().locale());
        return new CampSheet(
                plan.supplies().isPresent(),
                advice,
                new BarsPicture(
                                bars,
                                new BarsPicture.Wording(
                                        advice, now.words().of("camp.picture", Math.round(100 * plan.chanceWanted()))))
                        .draw(),
                shown.stream()
                        .map(option -> new OptionLine(
                                now.words().count("camp.supplies", option.supplies()),
                                now.gas(option.gas()),
                                band(now, option.fillsMade()),
                                band(now, option.daysCovered()),
                                percent(now, option)))
                        .toList());
    }

    private static String percent(BenchNow now, CampOption option) {
        return now.words()
                .of(
                        "send-back.percent",
                        Chance.percentDown(option.chanceAll(), now.words().locale()));
    }

    private static String band(BenchNow now, Band band) {
        return now.words().of("camp.band", band.middle(), band.low90(), band.high90());
    }

    private static double number(Reader reader, String field) {
        @Nullable BigDecimal typed = reader.numberIfTyped(field);
        return typed == null ? 0.0 : typed.doubleValue();
    }

    private static int whole(BenchNow now, Reader reader, String field) {
        @Nullable BigDecimal typed = reader.numberIfTyped(field);
        if (typed != null && typed.stripTrailingZeros().scale() > 0) {
            reader.fault(field, now.words().of("fault.whole", reader.text(field)));
        }
        return typed == null ? 0 : typed.intValue();
    }
}
