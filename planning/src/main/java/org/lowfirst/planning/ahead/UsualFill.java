package org.lowfirst.planning.ahead;

import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;

/**
 * A fill as it is made again and again.
 *
 * @param bottle what people call the bottle or its kind
 * @param waterVolume internal volume
 * @param servicePressure marked pressure at the reference temperature
 * @param start settled reading it is brought with
 * @param target settled reading wanted
 */
public record UsualFill(
        String bottle, Volume waterVolume, GaugePressure servicePressure, GaugePressure start, GaugePressure target) {}
