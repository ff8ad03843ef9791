package org.lowfirst.planning.flight;

import java.time.Duration;
import java.util.List;

/** Profiles for the tests of this package. */
final class Flights {

    private Flights() {}

    static Leg leg(String name, double minutes, double fromFeet, double toFeet) {
        return new Leg(
                name,
                Duration.ofMillis(Math.round(minutes * 60_000)),
                Altitude.ofFeet(fromFeet),
                Altitude.ofFeet(toFeet));
    }

    static Profile profile(Leg... legs) {
        Profile.Outcome outcome = Profile.of(List.of(legs));
        if (outcome instanceof Profile.Checked checked) {
            return checked.profile();
        }
        throw new AssertionError("refused: " + outcome);
    }

    static Profile level(double feet, double minutes) {
        return profile(leg("cruise", minutes, feet, feet));
    }

    static Occupant crew(String name, Flow flow) {
        return new Occupant(name, Occupant.Role.CREW, flow, Altitude.ofFeet(0));
    }
}
