package org.lowfirst.app.virtual;

import java.time.Instant;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.station.StatedPressure;

/**
 * One stage as it really was, and as it was read.
 *
 * @param cameToStop whether the valve was shut because the needle stood at the target
 * @param at when the gauges were read
 * @param room the air then
 * @param bottle true pressure then
 * @param supplyPressure true pressure of the supply then
 * @param bottleShown what was entered for the bottle
 * @param supplyShown what was entered for the supply
 */
public record StageSeen(
        String supply,
        boolean cameToStop,
        Instant at,
        Temperature room,
        GaugePressure bottle,
        GaugePressure supplyPressure,
        StatedPressure bottleShown,
        StatedPressure supplyShown) {}
