package org.lowfirst.web.warm;

import gg.jte.Content;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.honest.Outcome;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.planning.warm.FastestFill;
import org.lowfirst.planning.warm.FillInTime.PaceOutcome;
import org.lowfirst.planning.warm.FillSchedule;
import org.lowfirst.planning.warm.Leg;
import org.lowfirst.planning.warm.RiseLimits.RiseLimit;
import org.lowfirst.planning.warm.SchedulePoint;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.picture.HeatPicture;
import org.lowfirst.web.picture.HeatPicture.Band;
import org.lowfirst.web.picture.HeatPicture.Moment;
import org.lowfirst.web.warm.TimePage.LegLine;
import org.lowfirst.web.warm.TimePage.PaceLine;
import org.lowfirst.web.warm.TimePage.TimeSheet;
import org.lowfirst.web.words.Words;
import org.lowfirst.web.workplace.BenchNow;

/** Writes a fill on a clock for people. */
final class TimeWriter {

    private final Figures figures;
    private final Words words;
    private final PressureUnit pressure;
    private final TemperatureUnit temperature;

    TimeWriter(BenchNow now) {
        this.figures = now.figures();
        this.words = now.words();
        this.pressure = now.bench().settings().units().pressure();
        this.temperature = now.bench().settings().units().temperature();
    }

    TimeSheet sheet(
            FillSchedule schedule,
            Outcome<List<PaceOutcome>> paces,
            @Nullable FastestFill fastest,
            List<RiseLimit> limits) {
        return new TimeSheet(
                minutes(schedule.total_s()),
                figures.pressure(schedule.settled().atBench()),
                words.of("time.full", percent(schedule.percentOfWanted())),
                figures.temperature(schedule.peakBottleGas()),
                figures.temperature(schedule.lowestSupplyGas()),
                schedule.legs().stream().map(this::leg).toList(),
                paces instanceof Outcome.Given<List<PaceOutcome>> given
                        ? given.value().stream().map(this::pace).toList()
                        : List.of(),
                fastest == null ? "" : fastest(fastest),
                picture(schedule),
                limits.stream().map(this::limit).toList(),
                schedule.cautions().stream()
                        .map(caution -> caution.sentence(words.locale()))
                        .toList());
    }

    private static String percent(double value) {
        return String.format(Figures.LOCALE, "%d", (long) Math.floor(value));
    }

    private LegLine leg(Leg leg) {
        String what = switch (leg.kind()) {
            case STAGE -> words.of("time.stage", String.valueOf(leg.supply()));
            case CHANGEOVER -> words.of("time.changeover");
            case REST -> words.of("time.rest");
        };
        return new LegLine(
                what,
                minutes(leg.to_s() - leg.from_s()),
                words.of(
                        "time.gauge",
                        figures.pressure(leg.bottle().before()),
                        figures.pressureWithUnit(leg.bottle().after())),
                figures.temperature(leg.peakBottleGas()));
    }

    private PaceLine pace(PaceOutcome outcome) {
        return new PaceLine(
                rate(outcome.rate().toPerMinute(pressure)),
                minutes(outcome.total_s()),
                figures.temperature(outcome.peakBottleGas()),
                figures.pressureWithUnit(outcome.settled().atBench()));
    }

    private String fastest(FastestFill fastest) {
        FastestFill.Way way = fastest.others().get(0);
        String how = way.topUps() == 0
                ? words.of("time.fastest.steady", rate(way.rate().toPerMinute(pressure)), minutes(way.total_s()))
                : words.of(
                        "time.fastest.rests",
                        rate(way.rate().toPerMinute(pressure)),
                        minutes(way.total_s()),
                        way.topUps(),
                        minutes(way.rest_s()));
        return how + " " + words.of("time.full", percent(way.percentOfWanted()));
    }

    private String limit(RiseLimit limit) {
        return words.of(
                "time.limit",
                rate(limit.rate().toPerMinute(pressure)),
                limit.source().name().replace('-', ' ') + ", " + limit.source().source(),
                words.of("status." + limit.source().status().name().toLowerCase(Locale.ROOT)));
    }

    private String rate(double perMinute) {
        return words.of("time.rate", figures.rise(perMinute), figures.pressureUnit());
    }

    private String minutes(double seconds) {
        double minutes = seconds / 60.0;
        return minutes < 9.95
                ? words.of("time.minutes", figures.number(minutes, 1))
                : words.of("time.minutes", figures.number(Math.rint(minutes), 0));
    }

    private Content picture(FillSchedule schedule) {
        List<Moment> moments = new ArrayList<>();
        for (SchedulePoint point : schedule.series()) {
            moments.add(new Moment(
                    point.seconds() / 60.0,
                    point.bottle().to(pressure),
                    point.bottleGas().to(temperature)));
        }
        List<Band> bands = schedule.legs().stream()
                .filter(leg -> leg.kind() == Leg.Kind.STAGE)
                .map(leg -> new Band(String.valueOf(leg.supply()), leg.from_s() / 60.0, leg.to_s() / 60.0))
                .toList();
        GaugePressure stop = wanted(schedule);
        HeatPicture.Wording wording = new HeatPicture.Wording(
                words.of(
                        "time.picture",
                        minutes(schedule.total_s()),
                        figures.temperature(schedule.peakBottleGas()),
                        figures.pressureWithUnit(schedule.settled().atBench())),
                words.of("time.picture.gauge", figures.pressureUnit()),
                words.of("time.picture.gas", figures.temperatureUnit()),
                words.of("staircase.stop", figures.pressureWithUnit(stop)),
                words.of("time.picture.minutes"));
        return new HeatPicture(moments, bands, stop.to(pressure), wording).draw();
    }

    private static GaugePressure wanted(FillSchedule schedule) {
        GaugePressure target = schedule.request().target();
        return target == null ? schedule.request().bottle().servicePressure() : target;
    }
}
