package org.lowfirst.planning.warm;

import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;

/** What a gauge shows once the gas has a temperature. */
public record ReadingAt(Temperature temperature, GaugePressure reading) {}
