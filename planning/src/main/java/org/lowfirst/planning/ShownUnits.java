package org.lowfirst.planning;

import java.util.Locale;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.Digits;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.Volume;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.planning.words.Phrases;

/**
 * The units and the language in which sentences show quantities to people; full precision stays in the values.
 *
 * @param language of the sentences; numbers have a decimal comma and narrow spaces where it has
 */
public record ShownUnits(PressureUnit pressure, TemperatureUnit temperature, VolumeUnit volume, Locale language) {

    /** In English. */
    public ShownUnits(PressureUnit pressure, TemperatureUnit temperature, VolumeUnit volume) {
        this(pressure, temperature, volume, Locale.ENGLISH);
    }

    public ShownUnits in(Locale other) {
        return new ShownUnits(pressure, temperature, volume, other);
    }

    Phrases phrases() {
        return Phrases.in(language);
    }

    public static final ShownUnits US = new ShownUnits(PressureUnit.PSI, TemperatureUnit.FAHRENHEIT, VolumeUnit.LITRE);
    public static final ShownUnits METRIC = new ShownUnits(PressureUnit.BAR, TemperatureUnit.CELSIUS, VolumeUnit.LITRE);

    public String show(GaugePressure reading) {
        return pressure(reading, pressure);
    }

    String showRoundedDown(GaugePressure reading) {
        return whole(Math.floor(reading.to(pressure) * scale()) / scale());
    }

    String showRoundedUp(GaugePressure reading) {
        return whole(Math.ceil(reading.to(pressure) * scale()) / scale());
    }

    private String whole(double value) {
        return number(value, digits(pressure)) + " " + pressure.symbol();
    }

    private double scale() {
        return Math.pow(10, digits(pressure));
    }

    public String show(AbsolutePressure value) {
        return number(value.to(pressure), pressure == PressureUnit.BAR ? 2 : digits(pressure)) + " " + pressure.symbol()
                + " absolute";
    }

    public String show(Temperature value) {
        return number(value.to(temperature), 0) + " " + temperature.symbol();
    }

    public String show(Volume value) {
        String digits = Float.toString((float) value.to(volume)).replaceFirst("\\.0$", "");
        return Digits.in(language).written(digits) + " " + volume.symbol();
    }

    /** To 1 bar, 1 psi, 1 kPa or 0.01 MPa. */
    private String pressure(GaugePressure reading, PressureUnit unit) {
        return number(reading.to(unit), digits(unit)) + " " + unit.symbol();
    }

    private static int digits(PressureUnit unit) {
        return unit == PressureUnit.MEGAPASCAL ? 2 : 0;
    }

    /** A number with digits set apart and its decimals as the language writes them. */
    public String number(double value, int digits) {
        return Digits.in(language).of(value, digits);
    }
}
