package org.lowfirst.planning;

import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.TemperatureUnit;

/** At which temperature a marked service pressure counts. */
public enum ReferenceRule {
    /** 70 F (49 CFR 173.301a(c)). */
    US(70, TemperatureUnit.FAHRENHEIT),
    /** 15 C (ADR 1.2.1, from memory). */
    EU(15, TemperatureUnit.CELSIUS);

    private final double value;
    private final TemperatureUnit unit;

    ReferenceRule(double value, TemperatureUnit unit) {
        this.value = value;
        this.unit = unit;
    }

    public Temperature temperature() {
        return Temperature.of(value, unit);
    }
}
