package org.lowfirst.planning.session;

import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.BottleToFill;

/**
 * A bottle of a session.
 *
 * @param bottle the bottle, its reading and its wish (its target)
 * @param priority 1 = most important
 * @param floor least settled reading with which it counts as ready; null when only the wish will do
 */
public record SessionBottle(
        BottleToFill bottle, int priority, @Nullable GaugePressure floor) {

    public SessionBottle(BottleToFill bottle) {
        this(bottle, 1, null);
    }
}
