package org.lowfirst.app.flight;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class HoursAndMinutesTest {

    @Test
    void whatMustBeDoneByThenIsRoundedDown() {
        assertThat(HoursAndMinutes.before(3_719.9)).isEqualTo("1:01");
        assertThat(HoursAndMinutes.after(3_660.1)).isEqualTo("1:02");
        assertThat(HoursAndMinutes.near(3_690.0)).isEqualTo("1:02");
        assertThat(HoursAndMinutes.near(36_000.0)).isEqualTo("10:00");
    }

    @Test
    void aFullMinuteStays() {
        assertThat(HoursAndMinutes.before(60.0)).isEqualTo("0:01");
        assertThat(HoursAndMinutes.after(60.0)).isEqualTo("0:01");
        assertThat(HoursAndMinutes.before(59.999_999_99)).isEqualTo("0:01");
    }
}
