package org.lowfirst.planning.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lowfirst.planning.flight.Flights.leg;

import java.util.List;
import org.junit.jupiter.api.Test;

class ProfileTest {

    @Test
    void legsThatMeetMakeAProfile() {
        Profile profile = Flights.profile(leg("climb", 20, 500, 15000), leg("cruise", 60, 15000, 15000));
        assertThat(profile.duration().toMinutes()).isEqualTo(80);
        assertThat(profile.highest().toFeet()).isCloseTo(15000, within(1e-9));
    }

    @Test
    void noLegsAreRefused() {
        assertThat(problem()).isEqualTo(Profile.Problem.NO_LEGS);
    }

    @Test
    void legsThatDoNotMeetAreRefusedWithBothAltitudes() {
        Profile.Outcome outcome = Profile.of(List.of(leg("climb", 20, 500, 15000), leg("cruise", 60, 14000, 14000)));
        assertThat(outcome).isInstanceOfSatisfying(Profile.Refused.class, refused -> {
            assertThat(refused.problem()).isEqualTo(Profile.Problem.LEGS_DO_NOT_MEET);
            assertThat(refused.leg()).isEqualTo(1);
            assertThat(Math.round(refused.measured())).isEqualTo(14000);
            assertThat(Math.round(refused.limit())).isEqualTo(15000);
        });
    }

    @Test
    void durationsNotAboveZeroAreRefused() {
        assertThat(problem(leg("cruise", 0, 9000, 9000))).isEqualTo(Profile.Problem.DURATION_NOT_ABOVE_ZERO);
        assertThat(problem(leg("cruise", -5, 9000, 9000))).isEqualTo(Profile.Problem.DURATION_NOT_ABOVE_ZERO);
    }

    @Test
    void absurdAltitudesClimbsAndTimesAreRefused() {
        assertThat(problem(leg("cruise", 30, 150_000, 150_000))).isEqualTo(Profile.Problem.ALTITUDE_OUT_OF_RANGE);
        assertThat(problem(leg("climb", 1, 0, 30_000))).isEqualTo(Profile.Problem.TOO_STEEP);
        assertThat(problem(leg("cruise", 60 * 30, 9000, 9000))).isEqualTo(Profile.Problem.FLIGHT_TOO_LONG);
    }

    private static Profile.Problem problem(Leg... legs) {
        Profile.Outcome outcome = Profile.of(List.of(legs));
        if (outcome instanceof Profile.Refused refused) {
            return refused.problem();
        }
        throw new AssertionError("not refused: " + outcome);
    }
}
