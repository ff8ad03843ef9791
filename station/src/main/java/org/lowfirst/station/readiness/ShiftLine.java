package org.lowfirst.station.readiness;

import org.jspecify.annotations.Nullable;

/**
 * One bottle in service at the start of a shift.
 *
 * @param swapFor name of a spare that holds the wish, null when none is left or none is needed
 */
public record ShiftLine(
        GroupBottle bottle,
        Group group,
        ShiftState state,
        @Nullable String swapFor) {}
