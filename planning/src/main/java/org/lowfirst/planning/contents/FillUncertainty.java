package org.lowfirst.planning.contents;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lowfirst.planning.contents.MeteredCylinder.VolumeOrigin;

/**
 * How well the inputs of a plan are known.
 *
 * @param supplies each supply by name
 * @param bottle the bottle
 * @param temperatureDeviation_K standard deviation of the bench's temperature [K], at least 0
 */
public record FillUncertainty(Map<String, Known> supplies, Known bottle, double temperatureDeviation_K) {

    /**
     * What is known about one cylinder.
     *
     * @param gauge the gauge that was and will be read on it; the same one may serve several
     * @param volume where its water volume comes from
     */
    public record Known(Gauge gauge, VolumeOrigin volume) {}

    public FillUncertainty {
        supplies = Collections.unmodifiableMap(new LinkedHashMap<>(supplies));
        if (!(temperatureDeviation_K >= 0.0)) {
            throw new IllegalArgumentException(
                    "The standard deviation of the temperature (" + temperatureDeviation_K + " K) must be at least 0.");
        }
    }

    /** The same gauge on every supply, as with one gauge at the manifold. */
    public static FillUncertainty oneGauge(
            List<String> supplies, Gauge manifold, Gauge bottle, VolumeOrigin volumes, double temperatureDeviation_K) {
        Map<String, Known> all = new LinkedHashMap<>();
        supplies.forEach(name -> all.put(name, new Known(manifold, volumes)));
        return new FillUncertainty(all, new Known(bottle, volumes), temperatureDeviation_K);
    }
}
