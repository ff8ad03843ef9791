package org.lowfirst.station.readiness;

import org.lowfirst.gas.GaugePressure;

/**
 * One bottle to refill.
 *
 * @param missing what it lacks to the wish
 * @param belowFloor it cannot go back into service before
 */
public record RefillLine(GroupBottle bottle, Group group, GaugePressure missing, boolean belowFloor) {}
