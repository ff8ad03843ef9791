package org.lowfirst.app.flight;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import org.lowfirst.app.file.Kind;
import org.lowfirst.gas.Quantities;
import org.lowfirst.gas.QuantityKind;
import org.lowfirst.planning.flight.Altitude;

/** The kinds of quantity that only flight files have. */
final class FlightKinds {

    private static final double SECONDS_PER_MINUTE = 60.0;
    private static final double METRES_PER_FOOT = 0.3048;
    private static final double LITRES_PER_CUBIC_FOOT = 28.316846592;

    /** Pressure altitude. */
    static final Kind<Altitude> ALTITUDE = kind(
            QuantityKind.of("an altitude", "ft or m", "8000 ft", "ft: ft feet foot", "m: m metre metres meter meters")
                    .withSign(),
            "8000 ft or 2400 m",
            Map.of("ft", METRES_PER_FOOT, "m", 1.0),
            Altitude::new,
            Altitude::metres);

    /** A stretch of time. */
    static final Kind<Duration> TIME = kind(
            QuantityKind.of(
                    "a time",
                    "min, h or s",
                    "30 min",
                    "min: min mins minute minutes",
                    "h: h hr hrs hour hours",
                    "s: s sec secs second seconds"),
            "30 min or 1.5 h",
            Map.of("min", SECONDS_PER_MINUTE, "h", 3600.0, "s", 1.0),
            seconds -> Duration.ofMillis(Math.round(seconds * 1000.0)),
            time -> time.toMillis() / 1000.0);

    /** Free gas in a time [L/min]. */
    static final Kind<Double> FLOW = kind(
            QuantityKind.of(
                    "a flow",
                    "L/min, L/h or cu ft/h",
                    "1.2 L/min",
                    "L/min: l/min lpm litre/min litres/min liter/min liters/min",
                    "L/h: l/h l/hr litre/h litres/h liter/h liters/h",
                    "cu ft/h: cuft/h cuft/hr ft3/h cfh scfh"),
            "1.2 L/min",
            Map.of(
                    "L/min",
                    1.0,
                    "L/h",
                    1.0 / SECONDS_PER_MINUTE,
                    "cu ft/h",
                    LITRES_PER_CUBIC_FOOT / SECONDS_PER_MINUTE),
            flow -> flow,
            flow -> flow);

    /** A share in per cent. */
    static final Kind<Double> SHARE = kind(
            QuantityKind.of("a share", "%", "10 %", "%: % percent"),
            "10 %",
            Map.of("%", 1.0),
            share -> share,
            share -> share);

    /** How fast an aircraft comes down [m/s]. */
    static final Kind<Double> DESCENT = kind(
            QuantityKind.of("a rate of descent", "ft/min or m/s", "500 ft/min", "ft/min: ft/min fpm", "m/s: m/s mps"),
            "500 ft/min or 2.5 m/s",
            Map.of("ft/min", METRES_PER_FOOT / SECONDS_PER_MINUTE, "m/s", 1.0),
            rate -> rate,
            rate -> rate);

    private FlightKinds() {}

    /**
     * A kind of quantity that is a number in one unit.
     *
     * @param perUnit how much of that unit is in each unit people type
     */
    private static <T extends Comparable<T>> Kind<T> kind(
            QuantityKind units,
            String example,
            Map<String, Double> perUnit,
            Function<Double, T> make,
            Function<T, Double> number) {
        return new Kind<>(
                example,
                List.copyOf(new TreeSet<>(perUnit.keySet())),
                text -> Quantities.read(
                        text, units, (typed, symbol) -> make.apply(typed * perUnit.getOrDefault(symbol, 1.0))),
                (value, symbol) -> Optional.ofNullable(perUnit.get(symbol)).map(size -> number.apply(value) / size));
    }
}
