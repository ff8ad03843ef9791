package org.lowfirst.planning.ahead;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Properties;
import java.util.stream.Stream;

/** The file ahead.properties; its comments say what each number means and where it comes from. */
final class AheadAssumptions {

    private static final AheadAssumptions FROM_FILE = new AheadAssumptions();

    private final Properties values = new Properties();

    private AheadAssumptions() {
        URL file = Objects.requireNonNull(
                AheadAssumptions.class.getResource("ahead.properties"), "ahead.properties is not in the jar");
        try (Reader text = new InputStreamReader(file.openStream(), StandardCharsets.UTF_8)) {
            values.load(text);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The same with another number of lives, for a quick look. */
    static AheadAssumptions withLives(int lives) {
        AheadAssumptions changed = new AheadAssumptions();
        changed.values.setProperty("lives", Integer.toString(lives));
        return changed;
    }

    static AheadAssumptions fromFile() {
        return FROM_FILE;
    }

    UseGuess guess() {
        return UseGuess.of(number("guess.fillsPerYear"), number("guess.weighsFills"));
    }

    double weekdayShape() {
        return number("weekday.shape");
    }

    double monthShape() {
        return number("month.shape");
    }

    List<Double> dayShapes() {
        return Stream.of(text("day.shapes").split(" ")).map(Double::valueOf).toList();
    }

    double usualFillsWeigh() {
        return number("usualFills.weigh");
    }

    int longestHistory_d() {
        return (int) number("history.longest_d");
    }

    int longestAhead_d() {
        return (int) number("ahead.longest_d");
    }

    int lives() {
        return (int) number("lives");
    }

    int samplerFirst() {
        return (int) number("sampler.first");
    }

    int samplerBetween() {
        return (int) number("sampler.between");
    }

    double orderChance() {
        return number("order.chance");
    }

    int orderSoon_d() {
        return (int) number("order.soon_d");
    }

    private double number(String key) {
        double value = Double.parseDouble(text(key));
        if (!(value > 0.0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(
                    "The value of " + key + " (" + value + ") in ahead.properties must be finite and above 0.");
        }
        return value;
    }

    private String text(String key) {
        return Objects.requireNonNull(values.getProperty(key), key + " is not in ahead.properties");
    }
}
