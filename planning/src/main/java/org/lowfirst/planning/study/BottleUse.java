package org.lowfirst.planning.study;

import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;

/**
 * A kind of bottle that is brought to the bench over and over.
 *
 * @param name what people call it
 * @param waterVolume internal volume
 * @param servicePressure marked pressure at the reference temperature; caps the stop on a cold day
 * @param target settled reading wanted at the bench's temperature of the day
 * @param startLowest lowest settled reading it is brought with
 * @param startHighest highest one; any reading between is as likely
 * @param share how often this kind is brought, in any unit, above 0
 */
public record BottleUse(
        String name,
        Volume waterVolume,
        GaugePressure servicePressure,
        GaugePressure target,
        GaugePressure startLowest,
        GaugePressure startHighest,
        double share) {}
