package org.lowfirst.app.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Parsed;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.Quantities;
import org.lowfirst.gas.QuantityKind;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.Volume;
import org.lowfirst.gas.VolumeUnit;

/**
 * How one kind of quantity is written in a plan file.
 *
 * @param example what a right value looks like
 * @param units its units, those most often mixed up first
 * @param read reads one
 * @param in the number of a quantity in the unit of a symbol, if it is one of {@code units}
 */
public record Kind<T extends Comparable<T>>(
        String example,
        List<String> units,
        Function<String, Parsed<T>> read,
        BiFunction<T, String, Optional<Double>> in) {

    /** Absolute pressures count against the standard atmosphere. */
    public static final Kind<GaugePressure> PRESSURE = new Kind<>(
            "2015 psi or 150 bar",
            List.of("psi", "bar", "kPa", "MPa"),
            text -> Quantities.gaugePressure(text, StandardAtmosphere.PRESSURE),
            (pressure, symbol) -> Stream.of(PressureUnit.values())
                    .filter(unit -> unit.symbol().equals(symbol))
                    .map(pressure::to)
                    .findFirst());

    public static final Kind<Temperature> TEMPERATURE = new Kind<>(
            "70 F or 20 C",
            List.of("F", "C", "K"),
            Quantities::temperature,
            (temperature, symbol) -> Stream.of(TemperatureUnit.values())
                    .filter(unit -> unit.symbol().equals(symbol))
                    .map(temperature::to)
                    .findFirst());

    public static final Kind<Volume> VOLUME = new Kind<>(
            "2.9 L",
            List.of("L", "cu in"),
            Quantities::volume,
            (volume, symbol) -> Stream.of(VolumeUnit.values())
                    .filter(unit -> unit.symbol().equals(symbol))
                    .map(volume::to)
                    .findFirst());

    /**
     * A kind of quantity that is a number in one unit.
     *
     * @param perUnit how much of that unit is in each unit people type
     */
    public static Kind<Double> scaled(QuantityKind units, String example, Map<String, Double> perUnit) {
        return new Kind<>(
                example,
                List.copyOf(new TreeSet<>(perUnit.keySet())),
                text -> Quantities.read(text, units, (typed, symbol) -> typed * perUnit.getOrDefault(symbol, 1.0)),
                (value, symbol) -> Optional.ofNullable(perUnit.get(symbol)).map(size -> value / size));
    }
}
