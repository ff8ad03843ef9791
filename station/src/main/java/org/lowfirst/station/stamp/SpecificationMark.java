package org.lowfirst.station.stamp;

import org.lowfirst.gas.PressureUnit;

/**
 * One row of the table of codes.
 *
 * @param code without the authority, e.g. "3AA", "ISO 9809-1"
 * @param bareUnit unit of a pressure stamped after it without one
 * @param remembered from memory, not read
 * @param note what it names
 */
public record SpecificationMark(
        Convention convention,
        String code,
        Wall wall,
        PressureUnit bareUnit,
        boolean remembered,
        String source,
        String note) {}
