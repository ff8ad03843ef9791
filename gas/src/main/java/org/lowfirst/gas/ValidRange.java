package org.lowfirst.gas;

/** Where an equation may be used: temperatures from lowest to highest, pressures from vacuum to highest. */
public record ValidRange(Temperature lowest, Temperature highest, AbsolutePressure highestPressure) {}
