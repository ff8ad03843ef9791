package org.lowfirst.transfer.warm;

import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;

/**
 * One moment of a warm stage.
 *
 * @param seconds since its start
 * @param bottle gauge reading of the bottle
 * @param supply gauge reading of the source
 * @param bottleGas temperature of the gas in the bottle
 * @param bottleWall temperature of the inner layer of its wall
 * @param supplyGas temperature of the gas in the source
 * @param supplyWall temperature of the inner layer of its wall
 */
public record WarmPoint(
        double seconds,
        GaugePressure bottle,
        GaugePressure supply,
        Temperature bottleGas,
        Temperature bottleWall,
        Temperature supplyGas,
        Temperature supplyWall) {}
