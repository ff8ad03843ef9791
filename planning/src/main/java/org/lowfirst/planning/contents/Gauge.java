package org.lowfirst.planning.contents;

import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;

/**
 * A pressure gauge and what is known about its errors.
 *
 * @param name what the bench calls it
 * @param accuracy class or stated error
 * @param calibrated when it was last compared with a standard; null when not known, then no drift is added
 * @param offset what the journal has taught about it; null when nothing
 */
public record Gauge(
        String name,
        GaugeScale scale,
        GaugeAccuracy accuracy,
        @Nullable Instant calibrated,
        @Nullable GaugeOffset offset) {

    private static final double DAYS_PER_YEAR = 365.25;

    /** A gauge of which only scale and class are known. */
    public static Gauge of(String name, GaugeScale scale, GaugeAccuracy accuracy) {
        return new Gauge(name, scale, accuracy, null, null);
    }

    public Gauge with(GaugeOffset learned) {
        return new Gauge(name, scale, accuracy, calibrated, learned);
    }

    /** Largest error the class or statement allows. */
    public GaugePressure limit() {
        return accuracy.limit(scale.fullScale());
    }

    /** Expected lasting error [Pa]; 0 unless learned. */
    double expectedOffset_Pa() {
        return offset == null ? 0.0 : offset.tooHigh().pascals();
    }

    /**
     * Standard deviation of the lasting error [Pa]: rectangular within the limit unless learned, grown by drift since the
     * calibration.
     */
    double offset_Pa(Instant at, GaugeAssumptions assumptions) {
        double drift_Pa = assumptions.driftShare() * limit().pascals() * Math.sqrt(yearsSinceCalibration(at));
        return Math.hypot(lasting_Pa(), drift_Pa);
    }

    /** As {@link #offset_Pa}, without drift. */
    double lasting_Pa() {
        return offset == null
                ? limit().pascals() / Math.sqrt(3.0)
                : offset.standardDeviation().pascals();
    }

    /** Whether the lasting error is equally likely anywhere within the limit: nothing was learned about it. */
    boolean isRectangular() {
        return offset == null;
    }

    /** Standard deviation of one reading about the lasting error [Pa]: scatter, and rounding to the resolution. */
    double repeat_Pa(GaugeAssumptions assumptions) {
        return Math.hypot(
                assumptions.repeatShare() * limit().pascals(),
                scale.resolution().pascals() / Math.sqrt(12.0));
    }

    /** Standard deviation of the error of a difference along the scale, as a share of the difference. */
    double slope(GaugeAssumptions assumptions) {
        return assumptions.slopeShare() * limit().pascals() / scale.fullScale().pascals();
    }

    private double yearsSinceCalibration(Instant at) {
        if (calibrated == null || offset != null || !calibrated.isBefore(at)) {
            return 0.0;
        }
        return Duration.between(calibrated, at).toSeconds() / (DAYS_PER_YEAR * 86_400.0);
    }
}
