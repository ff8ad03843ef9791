package org.lowfirst.transfer.warm;

/**
 * A shut cylinder left alone.
 *
 * @param start how it is
 * @param surroundings the air around it
 * @param within it counts as settled when its gauge stays within this share of the settled reading, e.g. 0.01
 * @param sampling how long and how finely
 */
public record Rest(WarmState start, Surroundings surroundings, double within, Sampling sampling) {

    private static final double NEVER = 1e-12;

    /** A rest of a given length, however settled the cylinder is by then. */
    public static Rest lasting(WarmState start, Surroundings surroundings, double seconds, double interval_s) {
        return new Rest(start, surroundings, NEVER, new Sampling(interval_s, seconds));
    }

    public Rest {
        if (!(within > 0.0 && within < 1.0)) {
            throw new IllegalArgumentException("The share (" + within + ") must be between 0 and 1.");
        }
    }
}
