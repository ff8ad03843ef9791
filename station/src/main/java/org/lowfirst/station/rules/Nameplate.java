package org.lowfirst.station.rules;

import java.time.YearMonth;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;

/**
 * What could be read on the cylinder. Null: not there or not readable.
 *
 * @param specification code without the authority, e.g. "3AA", "3HT", "TC-3ALM" as "3ALM"; see the stamp package
 * @param servicePressure marked pressure at the reference temperature of the book
 * @param made month of manufacture or first test
 */
public record Nameplate(
        @Nullable String specification,
        WallMaterial material,
        @Nullable GaugePressure servicePressure,
        @Nullable GaugePressure testPressure,
        @Nullable Volume waterVolume,
        @Nullable YearMonth made) {

    public static final Nameplate UNREADABLE = new Nameplate(null, WallMaterial.UNKNOWN, null, null, null, null);
}
