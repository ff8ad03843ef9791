package org.lowfirst.station.rules;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.Volume;
import org.lowfirst.gas.VolumeUnit;

/** Quantities as rule files write them: a number, a space, a unit. Writing and reading give the same value back. */
final class WrittenQuantity {

    private static final Pattern FORM = Pattern.compile("(-?\\d+(?:\\.\\d+)?)\\s+(\\S.*)");
    private static final MathContext DIGITS = new MathContext(10);

    private WrittenQuantity() {}

    static GaugePressure pressure(String text) {
        Matcher form = form(text, "a pressure such as 1800 psi or 200 bar");
        double value = Double.parseDouble(form.group(1));
        for (PressureUnit unit : PressureUnit.values()) {
            if (unit.symbol().equals(form.group(2))) {
                return GaugePressure.of(value, unit);
            }
        }
        if (form.group(2).equals("Pa")) {
            return new GaugePressure(value);
        }
        throw new IllegalArgumentException(
                "\"" + form.group(2) + "\" is not a unit of pressure: psi, bar, kPa, MPa, Pa.");
    }

    static Temperature temperature(String text) {
        Matcher form = form(text, "a temperature such as 70 F or 15 C");
        double value = Double.parseDouble(form.group(1));
        return switch (form.group(2)) {
            case "F" -> Temperature.of(value, TemperatureUnit.FAHRENHEIT);
            case "C" -> Temperature.of(value, TemperatureUnit.CELSIUS);
            case "K" -> new Temperature(value);
            default ->
                throw new IllegalArgumentException("\"" + form.group(2) + "\" is not a unit of temperature: F, C, K.");
        };
    }

    static Volume volume(String text) {
        Matcher form = form(text, "a volume such as 56.7 L");
        if (!form.group(2).equals(VolumeUnit.LITRE.symbol())) {
            throw new IllegalArgumentException("\"" + form.group(2) + "\" is not a unit of water volume: L.");
        }
        return Volume.ofLitres(Double.parseDouble(form.group(1)));
    }

    private static Matcher form(String text, String shape) {
        Matcher form = FORM.matcher(text);
        if (!form.matches()) {
            throw new IllegalArgumentException("\"" + text + "\" is not " + shape + ".");
        }
        return form;
    }

    /** The shortest of psi, bar, kPa that gives the same value back, else pascals. */
    static String write(GaugePressure pressure) {
        for (PressureUnit unit : PressureUnit.values()) {
            String number = rounded(pressure.to(unit));
            if (unit.toPascals(Double.parseDouble(number)) == pressure.pascals()) {
                return number + " " + unit.symbol();
            }
        }
        return exact(pressure.pascals()) + " Pa";
    }

    static String write(Temperature temperature) {
        String fahrenheit = rounded(temperature.toFahrenheit());
        if (TemperatureUnit.FAHRENHEIT.toKelvin(Double.parseDouble(fahrenheit)) == temperature.kelvin()
                && !fahrenheit.contains(".")) {
            return fahrenheit + " F";
        }
        String celsius = rounded(temperature.toCelsius());
        if (TemperatureUnit.CELSIUS.toKelvin(Double.parseDouble(celsius)) == temperature.kelvin()) {
            return celsius + " C";
        }
        return exact(temperature.kelvin()) + " K";
    }

    static String write(Volume volume) {
        String litres = rounded(volume.toLitres());
        boolean same = VolumeUnit.LITRE.toCubicMetres(Double.parseDouble(litres)) == volume.cubicMetres();
        return (same ? litres : exact(volume.toLitres())) + " L";
    }

    private static String rounded(double value) {
        BigDecimal rounded = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0).toPlainString() : rounded.toPlainString();
    }

    private static String exact(double value) {
        return BigDecimal.valueOf(value).toPlainString();
    }
}
