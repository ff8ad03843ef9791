package org.lowfirst.app.honest;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Objects;
import java.util.Properties;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.planning.contents.Gauge;
import org.lowfirst.planning.contents.GaugeAccuracy;
import org.lowfirst.planning.contents.GaugeScale;

/** What is taken for granted where the journal says nothing; from {@code journal-assumptions.properties}. */
final class JournalAssumptions {

    static final JournalAssumptions STANDARD = new JournalAssumptions("journal-assumptions.properties");

    private static final double MS_PER_HOUR = 3_600_000.0;

    private final Properties values = new Properties();

    private JournalAssumptions(String file) {
        try (Reader in = new InputStreamReader(
                Objects.requireNonNull(JournalAssumptions.class.getResourceAsStream(file), file),
                StandardCharsets.UTF_8)) {
            values.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException("The resource " + file + " could not be read.", e);
        }
    }

    /** How long after a fill a bottle counts as left alone. */
    Duration keptShut() {
        return hours("bottle.keptShut_h");
    }

    /** How long its gas then counts as warm. */
    Duration warm() {
        return hours("bottle.warm_h");
    }

    /** How long the gas of a supply that gave counts as cold. */
    Duration drawn() {
        return hours("supply.drawn_h");
    }

    /** So many of the latest entries are gone through. */
    int mostEntries() {
        return (int) number("entries.most");
    }

    /**
     * A gauge nobody described.
     *
     * @param highest the highest reading taken from it
     */
    Gauge gauge(String name, PressureUnit unit, GaugePressure highest) {
        boolean psi = unit == PressureUnit.PSI;
        PressureUnit scale = psi ? PressureUnit.PSI : PressureUnit.BAR;
        String key = psi ? "gauge.psi" : "gauge.bar";
        double full = Math.max(number(key + ".fullScale"), highest.to(scale));
        return Gauge.of(
                name,
                GaugeScale.of(full, number(key + ".division"), scale),
                new GaugeAccuracy.OfFullScale(number("gauge.class_percent")));
    }

    private Duration hours(String key) {
        return Duration.ofMillis(Math.round(number(key) * MS_PER_HOUR));
    }

    private double number(String key) {
        return Double.parseDouble(Objects.requireNonNull(values.getProperty(key), key));
    }
}
