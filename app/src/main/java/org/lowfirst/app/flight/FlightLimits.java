package org.lowfirst.app.flight;

/** How much a flight file and its track may hold. Far above any flight; they only keep a wrong file from hanging the program. */
public final class FlightLimits {

    public static final int MOST_BYTES = 262_144;

    /** A day of one fix a second is about 4 million bytes. */
    static final int MOST_TRACK_BYTES = 16_777_216;

    static final int MOST_PEOPLE = 60;
    static final int MOST_BOTTLES = 60;
    static final int MOST_LEGS = 500;

    private FlightLimits() {}
}
