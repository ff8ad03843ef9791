package org.lowfirst.gas;

/**
 * Thermodynamic temperature.
 *
 * @param kelvin temperature [K], finite, above 0
 */
public record Temperature(double kelvin) implements Comparable<Temperature> {

    public Temperature {
        if (!(kelvin > 0.0) || Double.isInfinite(kelvin)) {
            throw new IllegalArgumentException("The temperature (" + kelvin + " K) must be above 0 K.");
        }
    }

    public static Temperature of(double value, TemperatureUnit unit) {
        return new Temperature(unit.toKelvin(value));
    }

    public static Temperature ofCelsius(double celsius) {
        return of(celsius, TemperatureUnit.CELSIUS);
    }

    public static Temperature ofFahrenheit(double fahrenheit) {
        return of(fahrenheit, TemperatureUnit.FAHRENHEIT);
    }

    public double to(TemperatureUnit unit) {
        return unit.fromKelvin(kelvin);
    }

    public double toCelsius() {
        return to(TemperatureUnit.CELSIUS);
    }

    public double toFahrenheit() {
        return to(TemperatureUnit.FAHRENHEIT);
    }

    @Override
    public int compareTo(Temperature other) {
        return Double.compare(kelvin, other.kelvin);
    }
}
