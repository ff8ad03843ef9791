package org.lowfirst.app.virtual;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.SplittableRandom;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.planning.contents.ContentsAssumptions;
import org.lowfirst.planning.contents.Gauge;
import org.lowfirst.station.StatedPressure;

/**
 * A gauge with an error nobody knows.
 *
 * @param known what the bench knows of it
 * @param tooHigh its lasting error, the same at every reading
 * @param scatter standard deviation from reading to reading, rounding apart
 */
public record VirtualGauge(Gauge known, GaugePressure tooHigh, GaugePressure scatter) {

    /** A lasting error anywhere within the limit, equally likely; scatter as the estimates assume it. */
    public static VirtualGauge draw(Gauge known, SplittableRandom chance) {
        double limit_Pa = known.limit().pascals();
        double share = ContentsAssumptions.standard().gauges().repeatShare();
        return new VirtualGauge(
                known,
                new GaugePressure(limit_Pa * (2.0 * chance.nextDouble() - 1.0)),
                new GaugePressure(share * limit_Pa));
    }

    /** One look at the dial, rounded to what can be read off; never below zero. */
    public StatedPressure read(GaugePressure truth, SplittableRandom chance) {
        PressureUnit unit = known.scale().unit();
        double shown =
                unit.fromPascals(truth.pascals() + tooHigh.pascals() + scatter.pascals() * chance.nextGaussian());
        double step = unit.fromPascals(known.scale().resolution().pascals());
        double rounded = Math.max(0.0, step > 0.0 ? Math.rint(shown / step) * step : shown);
        BigDecimal value = BigDecimal.valueOf(rounded).setScale(2, RoundingMode.HALF_EVEN);
        return new StatedPressure(plain(value), unit);
    }

    private static BigDecimal plain(BigDecimal value) {
        return new BigDecimal(value.stripTrailingZeros().toPlainString());
    }

    /** The true pressure while the needle stands at {@code shown}. */
    public GaugePressure truthAt(GaugePressure shown) {
        return new GaugePressure(shown.pascals() - tooHigh.pascals());
    }

    /** How far a reading may be from the truth: the limit, four standard deviations of scatter, half a division. */
    public GaugePressure farthest() {
        return new GaugePressure(known.limit().pascals()
                + 4.0 * scatter.pascals()
                + 0.5 * known.scale().resolution().pascals());
    }
}
