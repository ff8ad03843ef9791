package org.lowfirst.app.virtual;

import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;

/**
 * What a person enters before a fill.
 *
 * @param bottle name of the bottle
 * @param before what its gauge shows
 * @param target settled reading wanted
 * @param temperature what the thermometer at the bench shows
 */
public record FillOrder(String bottle, StatedPressure before, StatedPressure target, StatedTemperature temperature) {}
