package org.lowfirst.planning;

import org.lowfirst.gas.GaugePressure;

/** A settled gauge reading before and after a stage. */
public record Change(GaugePressure before, GaugePressure after) {}
