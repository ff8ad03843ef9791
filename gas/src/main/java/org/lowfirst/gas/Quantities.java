package org.lowfirst.gas;

import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * Reads quantities as people type them: a number and its unit, "2,015 psi", "150 bar", "-5 °C", "2,9 L".
 *
 * <p>A number without a unit is refused. For pressures psi, bar, kPa and MPa (also psig, barg, kPag, MPag) are gauge; psia,
 * bara, kPaa, MPaa (also "abs") are absolute. How commas and points are read: {@link TypedNumber}, told in docs/quantities.md.
 */
public final class Quantities {

    private static final int LONGEST = 60;

    private Quantities() {}

    /** A pressure, gauge or absolute as its unit says; not below zero. */
    public static Parsed<Pressure> pressure(String text) {
        return read(text, QuantityKind.PRESSURE, (number, symbol) -> {
            boolean absolute = symbol.endsWith("Paa") || (symbol.endsWith("a") && !symbol.endsWith("Pa"));
            String unit = absolute ? symbol.substring(0, symbol.length() - 1) : symbol;
            PressureUnit pressureUnit = pressureUnit(unit);
            return absolute ? AbsolutePressure.of(number, pressureUnit) : GaugePressure.of(number, pressureUnit);
        });
    }

    /**
     * A pressure as a gauge would show it; an absolute one is converted.
     *
     * @param ambient pressure of the surroundings
     */
    public static Parsed<GaugePressure> gaugePressure(String text, AbsolutePressure ambient) {
        Parsed<GaugePressure> parsed = pressure(text).map(pressure -> pressure.toGauge(ambient));
        if (parsed instanceof Parsed.Read<GaugePressure> read && read.value().pascals() < 0.0) {
            return new Parsed.Unreadable<>(
                    "'" + text.strip() + "' is below the pressure of the surroundings, so no gauge can show it.",
                    0,
                    text);
        }
        return parsed;
    }

    /** A temperature above absolute zero. */
    public static Parsed<Temperature> temperature(String text) {
        return read(
                text, QuantityKind.TEMPERATURE, (number, symbol) -> Temperature.of(number, temperatureUnit(symbol)));
    }

    /** A volume, not below zero. */
    public static Parsed<Volume> volume(String text) {
        return read(text, QuantityKind.VOLUME, (number, symbol) -> Volume.of(number, volumeUnit(symbol)));
    }

    /** A mass, not below zero. */
    public static Parsed<Mass> mass(String text) {
        return read(
                text,
                QuantityKind.MASS,
                (number, symbol) -> symbol.equals("lb") ? Mass.ofPounds(number) : new Mass(number));
    }

    /**
     * A quantity of any kind.
     *
     * @param kind its units
     * @param make the quantity from the number that was typed and the symbol of its unit
     */
    public static <T> Parsed<T> read(String text, QuantityKind kind, BiFunction<Double, String, T> make) {
        int start = firstLetter(text, 0);
        if (start == text.length()) {
            return new Parsed.Unreadable<>(
                    "Nothing was typed where " + kind.name() + " is needed, e.g. " + kind.example() + ".", 0, text);
        }
        if (text.length() > LONGEST) {
            return new Parsed.Unreadable<>(
                    "The text is longer than " + LONGEST + " characters; " + kind.name() + " such as " + kind.example()
                            + " is needed.",
                    LONGEST,
                    text);
        }
        TypedNumber number;
        try {
            number = TypedNumber.at(text, start);
        } catch (TypedNumber.Unclear unclear) {
            return new Parsed.Unreadable<>(
                    unclear.getMessage() + " Please type " + kind.name() + " such as " + kind.example() + ".",
                    unclear.position,
                    text);
        }
        int unitStart = firstLetter(text, number.end());
        String typedNumber = text.substring(start, number.end());
        String typedUnit = text.substring(unitStart).strip();
        if (typedUnit.isEmpty()) {
            return new Parsed.Unreadable<>(typedNumber + " needs a unit: " + kind.offer() + ".", number.end(), text);
        }
        Optional<String> symbol = kind.findSymbol(typedUnit);
        if (symbol.isEmpty()) {
            return new Parsed.Unreadable<>(wrongUnit(text.strip(), typedUnit, kind), unitStart, text);
        }
        Optional<String> tooLow = tooLow(number.value(), symbol.get(), typedNumber + " " + symbol.get(), kind);
        if (tooLow.isPresent()) {
            return new Parsed.Unreadable<>(tooLow.get(), start, text);
        }
        return new Parsed.Read<>(
                make.apply(number.value() + 0.0, symbol.get()), number.value() + 0.0, symbol.get(), text);
    }

    private static String wrongUnit(String typed, String typedUnit, QuantityKind kind) {
        return QuantityKind.findByUnit(typedUnit)
                .map(other -> "'" + typed + "' is " + other.name() + "; " + kind.name() + " is needed here, in "
                        + kind.offer() + ".")
                .orElse("'" + typedUnit + "' is not a unit known here; " + kind.name() + " needs " + kind.offer()
                        + ".");
    }

    private static Optional<String> tooLow(double number, String symbol, String typed, QuantityKind kind) {
        if (kind.equals(QuantityKind.TEMPERATURE)) {
            TemperatureUnit unit = temperatureUnit(symbol);
            return unit.toKelvin(number) > 0.0
                    ? Optional.empty()
                    : Optional.of(String.format(
                            Locale.ROOT,
                            "%s must be above absolute zero, %.2f %s.",
                            typed,
                            unit.fromKelvin(0.0),
                            symbol));
        }
        String name = kind.name().substring(kind.name().indexOf(' ') + 1);
        return number >= 0.0 || kind.signed()
                ? Optional.empty()
                : Optional.of("The " + name + " (" + typed + ") must not be below zero.");
    }

    private static int firstLetter(String text, int from) {
        int at = from;
        while (at < text.length()
                && (Character.isWhitespace(text.charAt(at)) || TypedNumber.SPACES.indexOf(text.charAt(at)) >= 0)) {
            at++;
        }
        return at;
    }

    private static PressureUnit pressureUnit(String symbol) {
        for (PressureUnit unit : PressureUnit.values()) {
            if (unit.symbol().equals(symbol)) {
                return unit;
            }
        }
        throw new AssertionError("no pressure unit " + symbol);
    }

    private static TemperatureUnit temperatureUnit(String symbol) {
        for (TemperatureUnit unit : TemperatureUnit.values()) {
            if (unit.symbol().equals(symbol)) {
                return unit;
            }
        }
        throw new AssertionError("no temperature unit " + symbol);
    }

    private static VolumeUnit volumeUnit(String symbol) {
        for (VolumeUnit unit : VolumeUnit.values()) {
            if (unit.symbol().equals(symbol)) {
                return unit;
            }
        }
        throw new AssertionError("no volume unit " + symbol);
    }
}
