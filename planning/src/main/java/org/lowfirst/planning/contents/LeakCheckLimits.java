package org.lowfirst.planning.contents;

import java.time.Duration;
import org.lowfirst.gas.GaugePressure;

/**
 * What a timed leak check must keep to.
 *
 * @param source where the limits are published
 * @param settle least time between filling or opening and the first reading
 * @param hold least time between the readings
 * @param mostDrop largest drop that passes
 * @param temperatureChangeBelow_K the temperature must change by less than this [K]
 */
public record LeakCheckLimits(
        String source, Duration settle, Duration hold, GaugePressure mostDrop, double temperatureChangeBelow_K) {

    private static final double KELVIN_PER_FAHRENHEIT_STEP = 1.0 / 1.8;

    /** The published limits of {@code leak-check.properties}. */
    public static LeakCheckLimits published() {
        return Loaded.PUBLISHED;
    }

    private static final class Loaded {
        static final LeakCheckLimits PUBLISHED = read();

        private static LeakCheckLimits read() {
            SettingsFile file = new SettingsFile("leak-check.properties");
            LeakCheckLimits read = new LeakCheckLimits(
                    file.text("source") + " (" + file.text("source.status") + ")",
                    Duration.ofMinutes((long) file.positive("settle.least_min")),
                    Duration.ofMinutes((long) file.positive("hold.least_min")),
                    GaugePressure.ofPsi(file.positive("drop.most_psi")),
                    file.positive("temperature.change.below_F") * KELVIN_PER_FAHRENHEIT_STEP);
            file.end();
            return read;
        }
    }
}
