package org.lowfirst.web.fill;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.Caution;
import org.lowfirst.app.bench.Guide;
import org.lowfirst.app.bench.Phase;
import org.lowfirst.app.bench.Position;
import org.lowfirst.app.bench.ValveState;
import org.lowfirst.app.honest.StepStop;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.OpenFill;
import org.lowfirst.station.Supply;
import org.lowfirst.station.WarmStop;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.fill.StepPage.Act;
import org.lowfirst.web.fill.StepPage.FillLine;
import org.lowfirst.web.fill.StepPage.Gauge;
import org.lowfirst.web.fill.StepPage.GaugeField;
import org.lowfirst.web.fill.StepPage.Instruction;
import org.lowfirst.web.fill.StepPage.ValveBox;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.picture.StaircasePicture.When;
import org.lowfirst.web.words.Words;
import org.lowfirst.web.workplace.BenchNow;

/** Writes the steps of one fill under way. */
final class StepWriter {

    /** Two pressures nearer than this are the same reading on any gauge of a bench [Pa]. */
    private static final double SAME_PA = 50_000;

    /** Cautions about something found, not about what is always so. */
    private static final Set<Caution> ALARMS =
            EnumSet.of(Caution.READING_UNLIKE_EXPECTED, Caution.ABOVE_SERVICE_PRESSURE, Caution.BOTTLE_EMPTY);

    private final BenchNow now;
    private final OpenFill fill;
    private final Words words;
    private final Figures figures;
    private final @Nullable StepStop warm;

    StepWriter(BenchNow now, OpenFill fill) {
        this(now, fill, null);
    }

    /** @param warm where the gauge may go while the gas is warm; null where the mark holds */
    StepWriter(BenchNow now, OpenFill fill, @Nullable StepStop warm) {
        this.now = now;
        this.fill = fill;
        this.words = now.words();
        this.figures = now.figures();
        this.warm = warm;
    }

    String path() {
        return now.place().path("/fill/" + fill.id());
    }

    FillLine line() {
        String bottle = now.bench()
                .findBottle(fill.bottle())
                .map(Bottle::details)
                .map(details -> words.of(
                        "step.bottle",
                        details.name(),
                        figures.asTyped(details.waterVolume().stated())))
                .orElse(fill.bottle().value());
        String about = words.of(
                "step.about",
                figures.pressure(fill.before().pressure().gauge()),
                figures.pressureWithUnit(fill.target().gauge()),
                now.times().clock(fill.startedAt()));
        return new FillLine(path(), bottle, about);
    }

    /**
     * @param why why the rest of a session was planned again; empty when it was not
     * @param form what was typed into the entry
     * @param key key of the entry
     */
    StepPage page(Guide.Step step, List<String> why, Form form, String key) {
        @Nullable FillPlan rest = step.plan() instanceof FillPlan plan ? plan : null;
        return new StepPage(
                now.place(),
                line(),
                stages(step, rest),
                instruction(step),
                valves(step.valves()),
                gauge(step),
                alarms(step, why),
                cautions(step, false),
                act(step),
                rest == null || rest.fill().steps().isEmpty()
                        ? null
                        : Staircases.underWay(Past.of(fill, rest, now), rest, now),
                fields(step),
                step.position().toText(),
                form,
                key);
    }

    private List<ValveBox> valves(List<ValveState> valves) {
        return valves.stream().map(this::box).toList();
    }

    private List<String> alarms(Guide.Step step, List<String> why) {
        List<String> alarms = new ArrayList<>(cautions(step, true));
        Phase phase = step.position().phase();
        if (!why.isEmpty() && (phase == Phase.OPEN_SUPPLY || phase == Phase.SHUT_BOTTLE)) {
            alarms.add(words.of("session.now.again") + " " + String.join(" ", why));
        }
        return alarms;
    }

    private List<String> cautions(Guide.Step step, boolean alarming) {
        List<String> cautions = new ArrayList<>();
        step.cautions().stream()
                .filter(caution -> ALARMS.contains(caution) == alarming)
                .forEach(caution -> cautions.add(words.of(
                        "caution." + caution.name().toLowerCase(Locale.ROOT),
                        figures.asTyped(fill.bottleNow().pressure()))));
        @Nullable WarmStop permission = now.bench().warmStop();
        if (!alarming && permission != null && step.position().phase() == Phase.WATCH) {
            cautions.add(words.of("warm-stops.note", permission.responsible(), permission.followed()));
        }
        return cautions;
    }

    /** The valves that are not shut. */
    List<ValveBox> open(List<ValveState> valves) {
        return valves.stream()
                .filter(valve -> valve.setting() != ValveState.Setting.SHUT)
                .map(this::box)
                .toList();
    }

    private ValveBox box(ValveState valve) {
        String setting = valve.setting().name().toLowerCase(Locale.ROOT);
        return new ValveBox(valve.name(), words.of("valve." + setting), setting, valve.act());
    }

    private List<When> stages(Guide.Step step, @Nullable FillPlan rest) {
        List<When> stages = new ArrayList<>();
        fill.stages().forEach(stage -> stages.add(When.PAST));
        int coming = rest == null ? 0 : rest.fill().steps().size();
        for (int i = 0; i < coming; i++) {
            stages.add(i == 0 && step.supply() != null ? When.NOW : When.LATER);
        }
        return stages;
    }

    private Instruction instruction(Guide.Step step) {
        String phase = "phase." + step.position().phase().name().toLowerCase(Locale.ROOT);
        return new Instruction(
                words.of(phase + ".todo", supply(step), stop(step)),
                words.of(phase + ".then", supply(step), stop(step)));
    }

    private Act act(Guide.Step step) {
        String phase = "phase." + step.position().phase().name().toLowerCase(Locale.ROOT);
        String label = words.of(phase + ".done", supply(step), stop(step));
        @Nullable Position next = step.next();
        if (next != null) {
            return new Act(Steps.at(path(), next, now.now()), label);
        }
        if (step.position().phase() == Phase.VENT_HOSE) {
            return new Act(now.place().path("/session/now"), label);
        }
        return new Act(path() + (step.position().phase() == Phase.FINISH ? "/finish" : "/stage"), label);
    }

    private Gauge gauge(Guide.Step step) {
        @Nullable GaugePressure shown = shown(step);
        String label = isStop(step) ? "step.shut-at" : "step.meet-at";
        return new Gauge(
                figures.pressureUnit(),
                words.of(label),
                shown == null ? "" : figures.pressure(shown),
                figures.pressure(warm == null ? step.neverAbove() : warm.neverAbove()),
                why(step));
    }

    /** Where the gauges meet sooner, only the limit is of use. */
    private List<String> why(Guide.Step step) {
        if (warm == null) {
            return List.of();
        }
        return isStop(step) ? warm.sentences() : List.of(warm.limit());
    }

    private List<GaugeField> fields(Guide.Step step) {
        if (step.next() != null || step.position().phase() == Phase.VENT_HOSE) {
            return List.of();
        }
        List<GaugeField> fields = new ArrayList<>();
        fields.add(new GaugeField("bottle", words.of("step.bottle-gauge", figures.pressureUnit())));
        @Nullable Supply supply = step.supply();
        if (supply != null) {
            fields.add(new GaugeField("supply", words.of("step.supply-gauge", name(supply), figures.pressureUnit())));
        }
        return fields;
    }

    /** Whether the valve is shut by the bottle's gauge, at the target or at what it must not pass. */
    private boolean isStop(Guide.Step step) {
        @Nullable GaugePressure expected = step.expected();
        double stop_Pa =
                Math.min(fill.target().gauge().pascals(), step.neverAbove().pascals());
        return expected != null && Math.abs(expected.pascals() - stop_Pa) < SAME_PA;
    }

    /** What the gauge comes to; where the valve is shut by it, as warm as the gas then is. */
    private @Nullable GaugePressure shown(Guide.Step step) {
        return warm != null && isStop(step) ? warm.shutAt() : step.expected();
    }

    private String stop(Guide.Step step) {
        @Nullable GaugePressure shown = shown(step);
        return shown == null ? "" : figures.pressureWithUnit(shown);
    }

    private static String supply(Guide.Step step) {
        @Nullable Supply supply = step.supply();
        return supply == null ? "" : name(supply);
    }

    private static String name(Supply supply) {
        return supply.details().name();
    }
}
