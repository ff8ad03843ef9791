package org.lowfirst.planning;

import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;

/**
 * Where the valve is shut.
 *
 * @param reading settled gauge reading at the bench's temperature at which the fill ends: the lower of {@code wanted} and
 *     {@code neverAbove}
 * @param wanted the target asked for
 * @param neverAbove the lower of the marked service pressure and the reading, at the bench's temperature, of gas that reads the
 *     service pressure at the reference temperature
 * @param cap which of the two limits bit, if any
 * @param bench temperature of the bench, at which the readings count
 * @param reference temperature at which the service pressure counts
 */
public record StopReading(
        GaugePressure reading,
        GaugePressure wanted,
        GaugePressure neverAbove,
        Cap cap,
        Temperature bench,
        Temperature reference) {}
