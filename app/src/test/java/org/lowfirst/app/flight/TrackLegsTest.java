package org.lowfirst.app.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.lowfirst.app.file.Place;
import org.lowfirst.planning.flight.Leg;
import org.lowfirst.planning.flight.Profile;

final class TrackLegsTest {

    @Test
    void aShortFlightIsToldByTheHalfHour() {
        List<Leg> legs = TrackLegs.of(List.of(fix(100, 500), fix(1_000, 1_400), fix(5_500, 1_400)));
        assertThat(legs)
                .extracting(Leg::name)
                .containsExactly("0:00 to 0:30", "0:00 to 0:30", "0:30 to 1:00", "1:00 to 1:30");
        assertThat(legs.get(0).to().metres()).isCloseTo(1_400.0, within(1e-9));
        assertThat(legs.stream().map(Leg::duration).reduce(Duration.ZERO, Duration::plus))
                .isEqualTo(Duration.ofMinutes(90));
        assertThat(Profile.of(legs)).isInstanceOf(Profile.Checked.class);
    }

    @Test
    void aLongFlightIsToldByTheHour() {
        List<Leg> legs = TrackLegs.of(List.of(fix(0, 500), fix(5 * 3_600 + 61, 500)));
        assertThat(legs).extracting(Leg::name).startsWith("0:00 to 1:00").endsWith("5:00 to 5:02");
        assertThat(legs).hasSize(6);
    }

    @Test
    void legsAreCutWhereTheHourIsAndMeet() {
        List<Leg> legs = TrackLegs.of(List.of(fix(0, 0), fix(3_600, 3_600), fix(14_400, 0)));
        for (int i = 1; i < legs.size(); i++) {
            assertThat(legs.get(i).from().metres())
                    .isCloseTo(legs.get(i - 1).to().metres(), within(1e-9));
        }
        assertThat(legs.get(2).from().metres()).isCloseTo(2_400.0, within(1e-9));
    }

    private static Fix fix(double seconds, double metres) {
        return new Fix(seconds, metres, Place.START);
    }
}
