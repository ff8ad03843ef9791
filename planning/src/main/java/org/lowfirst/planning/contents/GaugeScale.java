package org.lowfirst.planning.contents;

import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;

/**
 * The scale of a gauge.
 *
 * @param unit unit of the scale
 * @param fullScale highest value, above 0
 * @param resolution smallest difference a person reads off, at least 0, below full scale
 */
public record GaugeScale(PressureUnit unit, GaugePressure fullScale, GaugePressure resolution) {

    public GaugeScale {
        if (!(fullScale.pascals() > 0.0)) {
            throw new IllegalArgumentException("The full scale (" + fullScale.pascals() + " Pa) must be above 0.");
        }
        if (!(resolution.pascals() >= 0.0 && resolution.compareTo(fullScale) < 0)) {
            throw new IllegalArgumentException(
                    "The resolution (" + resolution.pascals() + " Pa) must be at least 0 and below full scale.");
        }
    }

    public static GaugeScale of(double fullScale, double resolution, PressureUnit unit) {
        return new GaugeScale(unit, GaugePressure.of(fullScale, unit), GaugePressure.of(resolution, unit));
    }
}
