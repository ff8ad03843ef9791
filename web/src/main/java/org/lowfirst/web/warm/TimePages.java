package org.lowfirst.web.warm;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.fitness.FitnessReport;
import org.lowfirst.app.honest.FillingInTime;
import org.lowfirst.app.honest.Outcome;
import org.lowfirst.planning.warm.FastestFill;
import org.lowfirst.planning.warm.FillSchedule;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.transfer.warm.RiseRate;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.gate.Gates;
import org.lowfirst.web.view.NoSuchThing;
import org.lowfirst.web.warm.TimePage.TimeSheet;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;

/** Shows a planned fill on a clock. Enters nothing. */
@Controller
public final class TimePages {

    /** How near to what it may get the fastest way has to end [%]. */
    private static final double PERCENT_SHORT = 3.0;

    private final Workplace workplace;

    public TimePages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/fill/time")
    View time(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Bottle bottle = bottle(now, typed);
        FillingInTime filling = workplace.benches().fillingInTime();
        Map<String, String> fields = new HashMap<>(typed);
        RiseRate usual = filling.limits().get(0).rate();
        fields.putIfAbsent("rate", now.figures().riseToType(usual.pascalsPerSecond()));
        Reader reader = new Reader(fields, now.bench().settings().units(), now.words());
        @Nullable StatedPressure before = reader.pressure("before");
        @Nullable StatedPressure target = reader.pressure("target");
        @Nullable StatedTemperature temperature = reader.temperatureIfTyped("temperature");
        @Nullable StatedPressure rise = reader.pressure("rate");
        if (rise != null && rise.value().signum() <= 0) {
            reader.fault("rate", now.words().of("fault.rate"));
        }
        if (!reader.form().sound() || before == null || target == null || rise == null) {
            return workplace.screens().refused(page(now, bottle, reader.form(), null));
        }
        Reading reading = now.reading(before, temperature);
        FitnessReport report = workplace.benches().judgingFitness().forFill(now.id(), bottle.id(), target, reading);
        if (!report.mayBeFilled()) {
            return workplace.screens().show(Gates.page(workplace, now, bottle, report, reading, reader.form()));
        }
        FillingInTime.Wish wish = new FillingInTime.Wish(
                bottle.id(),
                before.gauge(),
                target.gauge(),
                temperature == null ? null : temperature.temperature(),
                RiseRate.perMinute(rise.value().doubleValue(), rise.unit()),
                now.bench().bankNames().contains(typed.getOrDefault("bank", ""))
                        ? typed.getOrDefault("bank", "")
                        : null);
        return shown(now, bottle, reader, filling, wish);
    }

    private View shown(BenchNow now, Bottle bottle, Reader reader, FillingInTime filling, FillingInTime.Wish wish) {
        Outcome<FillSchedule> outcome = filling.schedule(now.id(), wish);
        if (outcome instanceof Outcome.Given<FillSchedule> given) {
            TimeWriter writer = new TimeWriter(now);
            @Nullable
            FastestFill fastest =
                    filling.fastest(now.id(), wish, PERCENT_SHORT) instanceof Outcome.Given<FastestFill> found
                            ? found.value()
                            : null;
            TimeSheet sheet = writer.sheet(given.value(), filling.compare(now.id(), wish), fastest, filling.limits());
            return workplace.screens().show(page(now, bottle, reader.form(), sheet));
        }
        Outcome.Declined<FillSchedule> declined = (Outcome.Declined<FillSchedule>) outcome;
        reader.fault(
                "form", declined.problem().sentence() + " " + declined.problem().advice());
        return workplace.screens().refused(page(now, bottle, reader.form(), null));
    }

    private static TimePage page(BenchNow now, Bottle bottle, Form form, @Nullable TimeSheet sheet) {
        return new TimePage(
                now.place(),
                bottle.id().value(),
                bottle.details().name(),
                now.place().path("/fill/plan"),
                now.words().of("time.rate.unit", now.figures().pressureUnit()),
                form,
                sheet);
    }

    private static Bottle bottle(BenchNow now, Map<String, String> typed) {
        String id = typed.getOrDefault("bottle", "");
        return now.bench().listBottles().stream()
                .filter(bottle -> bottle.id().value().equals(id))
                .findFirst()
                .orElseThrow(() -> new NoSuchThing("bottle " + id));
    }
}
