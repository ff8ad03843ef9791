package org.lowfirst.gas;

/** Units of temperature. */
public enum TemperatureUnit {
    FAHRENHEIT("F") {
        @Override
        public double toKelvin(double value) {
            return (value + 459.67) / 1.8;
        }

        @Override
        public double fromKelvin(double kelvin) {
            return kelvin * 1.8 - 459.67;
        }
    },
    CELSIUS("C") {
        @Override
        public double toKelvin(double value) {
            return value + 273.15;
        }

        @Override
        public double fromKelvin(double kelvin) {
            return kelvin - 273.15;
        }
    },
    KELVIN("K") {
        @Override
        public double toKelvin(double value) {
            return value;
        }

        @Override
        public double fromKelvin(double kelvin) {
            return kelvin;
        }
    };

    private final String symbol;

    TemperatureUnit(String symbol) {
        this.symbol = symbol;
    }

    public String symbol() {
        return symbol;
    }

    public abstract double toKelvin(double value);

    public abstract double fromKelvin(double kelvin);
}
