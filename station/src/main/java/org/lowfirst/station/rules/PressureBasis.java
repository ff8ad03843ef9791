package org.lowfirst.station.rules;

/** Which marked pressure a factor is taken of. */
public enum PressureBasis {
    /** What the cylinder may be filled to at the reference temperature, plus-rating included. */
    SERVICE_PRESSURE,
    TEST_PRESSURE
}
