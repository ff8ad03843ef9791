package org.lowfirst.app.virtual;

import java.time.Duration;

/**
 * How long a person waits.
 *
 * @param open longest that a supply stays open
 * @param settle from shutting the valves to reading the gauges
 */
public record Patience(Duration open, Duration settle) {

    /**
     * Until gas and walls are as warm as the room, near enough for any gauge: an aluminium bottle of 5 L comes down by a factor of
     * e in about 70 minutes, and after two hours still reads 0.7 bar too much.
     */
    public static final Patience SETTLED = new Patience(Duration.ofHours(2), Duration.ofHours(4));

    /** As people in a hurry do it: gauges have met, gas is still warm. */
    public static final Patience BRISK = new Patience(Duration.ofMinutes(20), Duration.ofMinutes(10));
}
