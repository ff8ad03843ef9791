package org.lowfirst.planning.warm;

import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;

/**
 * One moment of a fill on a clock, for a picture.
 *
 * @param seconds since the start
 * @param leg place of its stretch, from 0
 * @param bottle gauge reading of the bottle
 * @param bottleGas temperature of its gas
 * @param bottleWall temperature of its wall
 * @param supply gauge reading of the open supply; null when none is
 * @param supplyGas temperature of its gas; null when none is
 */
public record SchedulePoint(
        double seconds,
        int leg,
        GaugePressure bottle,
        Temperature bottleGas,
        Temperature bottleWall,
        @Nullable GaugePressure supply,
        @Nullable Temperature supplyGas) {}
