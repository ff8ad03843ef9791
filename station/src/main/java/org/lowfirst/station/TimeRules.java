package org.lowfirst.station;

import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** Nothing has happened in the future. */
final class TimeRules {

    /** How far two clocks at a bench may differ (common practice, no source). */
    static final Duration CLOCK_TOLERANCE = Duration.ofMinutes(2);

    private TimeRules() {}

    static @Nullable Refused check(Fact fact, Circumstances circumstances) {
        Instant latest = circumstances.now().plus(CLOCK_TOLERANCE);
        if (circumstances.effectiveAt().isAfter(latest)) {
            return tooLate(circumstances.effectiveAt(), circumstances.now());
        }
        for (Reading reading : FactReadings.of(fact)) {
            if (reading.at().isAfter(latest)) {
                return tooLate(reading.at(), circumstances.now());
            }
        }
        return null;
    }

    private static Refused tooLate(Instant at, Instant now) {
        return new Refused(Rule.TIME_IN_FUTURE, "", new StatedTime(at), new StatedTime(now));
    }
}
