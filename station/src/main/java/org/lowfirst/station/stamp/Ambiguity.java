package org.lowfirst.station.stamp;

import org.jspecify.annotations.Nullable;

/**
 * Another way a part can be read.
 *
 * @param alternative the other meaning, null when it cannot be worked out
 */
public record Ambiguity(Kind kind, @Nullable Meaning alternative) {

    /** Why it can be read two ways. */
    public enum Kind {
        SERIAL_OR_TESTER,
        MONTH_OR_YEAR_FIRST,
        TEST_OR_SERVICE_PRESSURE,
        UNIT_NOT_STATED,
        /** A month to come: the next test, or a slip. */
        TEST_OR_NEXT_TEST,
        WATER_OR_GAS_VOLUME
    }
}
