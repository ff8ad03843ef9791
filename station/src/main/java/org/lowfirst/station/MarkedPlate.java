package org.lowfirst.station;

import java.time.YearMonth;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.rules.WallMaterial;

/**
 * What is marked on a bottle beside its water volume and service pressure. Null: not there or not readable.
 *
 * @param specification code without the authority, e.g. "3AA", "ISO 9809-1"
 * @param material what holds the pressure, alloy included
 * @param made month of manufacture or first test
 */
public record MarkedPlate(
        @Nullable String specification,
        WallMaterial material,
        @Nullable StatedPressure testPressure,
        @Nullable YearMonth made) {}
