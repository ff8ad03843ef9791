package org.lowfirst.station.rules;

import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;

/** A settled gauge pressure and the temperature it is stated at. */
public record PressureAt(GaugePressure pressure, Temperature temperature) {

    /** Temperatures closer than this are the same statement [K]. */
    private static final double SAME_K = 0.01;

    public boolean isAt(Temperature other) {
        return Math.abs(temperature.kelvin() - other.kelvin()) < SAME_K;
    }
}
