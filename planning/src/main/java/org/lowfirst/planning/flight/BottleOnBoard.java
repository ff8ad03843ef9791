package org.lowfirst.planning.flight;

import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;

/**
 * A bottle carried on the flight.
 *
 * @param reading settled gauge reading at the temperature of the request
 * @param servicePressure marked pressure
 * @param keep gauge pressure that is to stay in the bottle
 */
public record BottleOnBoard(
        String name, Volume waterVolume, GaugePressure reading, GaugePressure servicePressure, GaugePressure keep) {}
