package org.lowfirst.app.honest;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.lowfirst.app.words.Wording;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.warm.GasNow;
import org.lowfirst.planning.warm.SettledBottle;
import org.lowfirst.planning.warm.StopAndSettle;
import org.lowfirst.planning.warm.StopPlan;
import org.lowfirst.planning.warm.StopReason;
import org.lowfirst.planning.warm.TopUp;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.Settings;

/** A stop plan in sentences. */
final class StopSentences {

    private static final double S_PER_MINUTE = 60.0;

    private final Wording wording;
    private final ShownUnits units;

    StopSentences(Wording wording, Settings settings) {
        this.wording = wording;
        this.units = BenchUnits.shown(settings);
    }

    List<String> of(StopPlan plan) {
        List<String> sentences = new ArrayList<>();
        sentences.add(say(
                (plan.shutNow() ? "stop.now." : "stop.at.")
                        + VerdictSentences.key(plan.stop().why().name()),
                Map.of(
                        "reading", units.show(plan.now().reading()),
                        "stop", units.show(plan.stop().reading()),
                        "full", units.show(plan.stop().full()))));
        sentences.add(settled(plan));
        sentences.add(wait(plan.wait_s()));
        sentences.add(topUp(plan.topUp()));
        return sentences;
    }

    /**
     * @param wanted the stop for what is wanted
     * @param full the stop for as much as marking and rule book permit
     */
    StepStop ofStep(StopPlan wanted, StopPlan full) {
        String bench = units.show(wanted.request().bench().temperature());
        String reference = units.show(wanted.request().bench().rule().temperature());
        return new StepStop(
                wanted.stop().reading(),
                full.stop().reading(),
                say(
                        "step.settles",
                        Map.of(
                                "stop", units.show(wanted.stop().reading()),
                                "settled", units.show(wanted.ifShutAtStop().atBench()),
                                "bench", bench,
                                "most", units.show(wanted.topUp().fillTo()),
                                "margin", margin())),
                say(
                        limit(full),
                        Map.of(
                                "limit", units.show(full.stop().reading()),
                                "permitted",
                                        units.show(wanted.request().bottle().most()),
                                "reference", reference,
                                "margin", margin())),
                wanted.request().now() instanceof GasNow.Opening opening
                        ? say(
                                "step.gas.slow",
                                Map.of(
                                        "gas", units.show(wanted.stop().gas()),
                                        "rate",
                                                units.show(new GaugePressure(
                                                        opening.rate().pascalsPerSecond() * S_PER_MINUTE)),
                                        "cold", units.show(wanted.topUp().fillTo())))
                        : say(
                                "step.gas.readings",
                                Map.of("gas", units.show(wanted.stop().gas()))));
    }

    private String margin() {
        boolean fahrenheit = units.temperature() == TemperatureUnit.FAHRENHEIT;
        double margin_K = StopAndSettle.margin_K();
        return fahrenheit ? units.number(margin_K * 9.0 / 5.0, 0) + " F" : units.number(margin_K, 0) + " K";
    }

    private static String limit(StopPlan full) {
        if (full.stop().why() == StopReason.DEVELOPED_PRESSURE) {
            return "step.limit.hot";
        }
        return full.request().bottle().isMarkedOtherwise() ? "step.limit.book" : "step.limit.mark";
    }

    private String settled(StopPlan plan) {
        SettledBottle settled = plan.ifShutNow();
        return say(
                "stop.settles",
                Map.of(
                        "bench", units.show(settled.atBench()),
                        "benchTemperature", units.show(plan.request().bench().temperature()),
                        "reference", units.show(settled.atReference()),
                        "referenceTemperature",
                                units.show(plan.request().bench().rule().temperature()),
                        "percent", String.format(Locale.ROOT, "%.0f", settled.percentFull()),
                        "contents", FreeVolumes.words(settled.freeVolume(), units)));
    }

    private String wait(OptionalDouble wait_s) {
        if (wait_s.isEmpty()) {
            return say("stop.wait.long", Map.of());
        }
        double minutes = Math.ceil(wait_s.getAsDouble() / S_PER_MINUTE);
        return minutes < 1.0
                ? say("stop.wait.none", Map.of())
                : say("stop.wait", Map.of("minutes", String.format(Locale.ROOT, "%.0f", minutes)));
    }

    private String topUp(TopUp topUp) {
        return say(
                topUp.worthwhile() ? "stop.top-up" : "stop.no-top-up",
                Map.of(
                        "missing", FreeVolumes.words(topUp.freeVolume(), units),
                        "percent", String.format(Locale.ROOT, "%.0f", topUp.percent()),
                        "fillTo", units.show(topUp.fillTo())));
    }

    List<String> assumed(Bottle bottle, StopPlan plan) {
        List<String> assumed = new ArrayList<>();
        String name = bottle.details().name();
        if (plan.request().bottle().wall().assumed()) {
            assumed.add(say("assumed.wall", Map.of("bottle", name)));
        }
        if (bottle.details().material() == null) {
            assumed.add(say("assumed.material", Map.of("bottle", name)));
        }
        if (plan.now().wallAssumed()) {
            assumed.add(say("assumed.wall-as-warm", Map.of("bottle", name)));
        }
        if (plan.now().gasComputed()) {
            assumed.add(say(
                    "assumed.gas-computed",
                    Map.of("bottle", name, "gas", units.show(plan.now().gas()))));
        }
        return assumed;
    }

    private String say(String key, Map<String, String> values) {
        return wording.text(key, values);
    }
}
