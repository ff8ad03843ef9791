package org.lowfirst.planning.flight;

import java.time.Duration;

/**
 * A part of the flight over which the altitude changes evenly.
 *
 * @param name what the pilot calls it, e.g. "climb"
 * @param duration above zero
 */
public record Leg(String name, Duration duration, Altitude from, Altitude to) {

    double seconds() {
        return duration.toNanos() / 1e9;
    }

    /** Altitude [m] a fraction 0 to 1 of the way through the leg. */
    double metresAt(double fraction) {
        return from.metres() + fraction * (to.metres() - from.metres());
    }

    /** Climb rate [m/s], negative in descent. */
    double climb_mPerS() {
        return (to.metres() - from.metres()) / seconds();
    }
}
