package org.lowfirst.planning.flight;

/**
 * Pressure altitude, as an altimeter set to 1013.25 hPa shows it.
 *
 * @param metres geopotential metres above the standard sea level, finite
 */
public record Altitude(double metres) implements Comparable<Altitude> {

    /** International foot, exact by definition. */
    private static final double METRES_PER_FOOT = 0.3048;

    public Altitude {
        if (!Double.isFinite(metres)) {
            throw new IllegalArgumentException("The altitude (" + metres + " m) must be finite.");
        }
    }

    public static Altitude ofFeet(double feet) {
        return new Altitude(feet * METRES_PER_FOOT);
    }

    public double toFeet() {
        return metres / METRES_PER_FOOT;
    }

    @Override
    public int compareTo(Altitude other) {
        return Double.compare(metres, other.metres);
    }
}
