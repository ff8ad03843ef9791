package org.lowfirst.app.flight;

import java.util.Locale;
import org.lowfirst.app.file.TypedUnits;
import org.lowfirst.app.sheet.ShownReadings;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.planning.flight.Altitude;

/**
 * The units a flight file is typed in, in which the sheet answers.
 *
 * @param pressure of the first bottle's reading
 * @param temperature of the bottles' temperature
 * @param feet whether altitudes are in feet, else in metres
 * @param descent how the rate of descent was typed
 */
record FlightUnits(PressureUnit pressure, TemperatureUnit temperature, boolean feet, String descent) {

    private static final double STEP_FT = 10.0;

    static FlightUnits of(String pressure, String temperature, String altitude, String descent) {
        return new FlightUnits(
                TypedUnits.pressure(pressure), TypedUnits.temperature(temperature), altitude.equals("ft"), descent);
    }

    ShownReadings readings() {
        return new ShownReadings(pressure);
    }

    /** A reading that was given. */
    String given(GaugePressure reading) {
        return readings().withUnit(readings().given(reading));
    }

    String show(Temperature value) {
        return String.format(Locale.ROOT, "%.0f %s", value.to(temperature) + 0.0, temperature.symbol())
                .replaceFirst("^-0 ", "0 ");
    }

    String show(Altitude altitude) {
        return number(altitude) + " " + altitudeSymbol();
    }

    /** An altitude without its unit, to 10 ft or 1 m. */
    String number(Altitude altitude) {
        double value = feet ? STEP_FT * Math.rint(altitude.toFeet() / STEP_FT) : Math.rint(altitude.metres());
        return String.format(Locale.ROOT, "%,.0f", value + 0.0);
    }

    String altitudeSymbol() {
        return feet ? "ft" : "m";
    }
}
