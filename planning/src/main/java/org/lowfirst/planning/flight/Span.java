package org.lowfirst.planning.flight;

/**
 * A stretch of the flight.
 *
 * @param fromSeconds seconds after the start of the profile
 * @param toSeconds later than {@code fromSeconds}
 */
public record Span(double fromSeconds, double toSeconds) {

    public double seconds() {
        return toSeconds - fromSeconds;
    }
}
