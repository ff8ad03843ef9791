package org.lowfirst.web.warm;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.honest.Problem;
import org.lowfirst.gas.Mass;
import org.lowfirst.gas.Temperature;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.workplace.BenchNow;

/**
 * What somebody says of a warm bottle, as typed.
 *
 * @param form what was typed and what is wrong with it
 * @param reading what its gauge shows; null when it could not be read
 * @param gas temperature of its gas; null when nobody measured it
 * @param wall temperature of its wall; null when nobody measured it
 * @param bench temperature of the bench; null for its usual one
 * @param target settled reading wanted; null for as full as the marking allows
 * @param empty its mass without gas; null when nobody weighed it
 * @param feel how it feels; null when nobody said
 */
record SettleFields(
        Form form,
        @Nullable StatedPressure reading,
        @Nullable Temperature gas,
        @Nullable Temperature wall,
        @Nullable Temperature bench,
        @Nullable StatedPressure target,
        @Nullable Mass empty,
        @Nullable Feel feel) {

    /** What the computation names, and the field it was typed into. */
    private static final Map<String, String> FIELDS = Map.of(
            "reading", "reading",
            "temperature of the gas", "gas",
            "temperature of the wall", "wall",
            "temperature of the bench", "temperature",
            "target", "target");

    private static final String EMPTY_MASS = "empty mass";

    static SettleFields read(Map<String, String> typed, BenchNow now) {
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        @Nullable StatedPressure reading = reader.pressure("reading");
        @Nullable StatedTemperature gas = reader.gasTemperatureIfTyped("gas");
        @Nullable StatedTemperature wall = reader.gasTemperatureIfTyped("wall");
        @Nullable StatedTemperature bench = reader.temperatureIfTyped("temperature");
        @Nullable StatedPressure target = reader.pressureIfTyped("target");
        @Nullable Mass empty = reader.massIfTyped("empty");
        @Nullable Feel feel = Feel.find(reader.text("feel")).orElse(null);
        return new SettleFields(reader.form(), reading, of(gas), of(wall), of(bench), target, empty, feel);
    }

    private static @Nullable Temperature of(@Nullable StatedTemperature stated) {
        return stated == null ? null : stated.temperature();
    }

    Temperature benchOr(BenchNow now) {
        return bench == null
                ? now.bench().settings().surroundings().usualTemperature().temperature()
                : bench;
    }

    /** Temperature of the gas, typed or felt; null when nobody said anything. */
    @Nullable
    Temperature gasOrFelt(BenchNow now) {
        if (gas != null) {
            return gas;
        }
        return feel == null ? null : feel.wall(benchOr(now));
    }

    SettleFields faulting(String field, String sentence) {
        return new SettleFields(form.faulting(field, sentence), reading, gas, wall, bench, target, empty, feel);
    }

    /** A field falls, goes back in time or is out of range: said beside it. */
    SettleFields faulting(Problem problem) {
        String field = switch (problem.code()) {
            case "sequence-falls", "time-goes-back", "must-rise" -> "reading";
            default -> field(problem.about());
        };
        return faulting(field, problem.sentence() + " " + problem.advice());
    }

    private static String field(@Nullable String about) {
        if (about == null) {
            return "form";
        }
        return about.startsWith(EMPTY_MASS) ? "empty" : FIELDS.getOrDefault(about, "form");
    }
}
