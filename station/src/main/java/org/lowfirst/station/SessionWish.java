package org.lowfirst.station;

import org.jspecify.annotations.Nullable;

/**
 * A bottle of a session as it was asked for.
 *
 * @param fill the fill it becomes when it is put on the hose
 * @param before what its gauge showed when the session was planned
 * @param target settled gauge reading wanted
 * @param floor least settled reading with which it counts as ready; null when only the target will do
 * @param priority 1 = most important
 */
public record SessionWish(
        FillId fill,
        BottleId bottle,
        Reading before,
        StatedPressure target,
        @Nullable StatedPressure floor,
        int priority) {}
