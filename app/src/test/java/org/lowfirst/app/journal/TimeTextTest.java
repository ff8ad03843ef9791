package org.lowfirst.app.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TimeTextTest {

    @Test
    void timesAreReadAsTheGeneralParserReadsThem() {
        Random random = new Random(5);
        for (int i = 0; i < 10_000; i++) {
            Instant time = Instant.ofEpochMilli((long) (random.nextDouble() * 4_102_444_800_000L));
            String text = TimeText.write(time);
            assertThat(text).hasSize(24);
            assertThat(TimeText.parse(text)).isEqualTo(time).isEqualTo(Instant.parse(text));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "2026-06-14",
                "2026-06-14T10:05:00Z",
                "2026-06-14 10:05:00.000Z",
                "2026-02-30T10:05:00.000Z",
                "2026-06-14T25:05:00.000Z",
                "2026-06-14T10:05:00,000Z",
                "2026-06-14T10:05:00.0x0Z",
                "2026-06-14T10:05:00.000+",
                "2026-06-1aT10:05:00.000Z"
            })
    void anythingElseIsRefused(String text) {
        assertThatExceptionOfType(DateTimeException.class).isThrownBy(() -> TimeText.parse(text));
    }
}
