package org.lowfirst.station.rules;

import java.time.YearMonth;

/**
 * The latest test as marked.
 *
 * @param month month of the test
 * @param plus a plus follows the date
 * @param star a star follows the date
 * @param suffix letters after the date, e.g. "E", "UE", "VE"; empty when none
 */
public record TestMark(YearMonth month, boolean plus, boolean star, String suffix) {

    public static TestMark of(int year, int month) {
        return new TestMark(YearMonth.of(year, month), false, false, "");
    }
}
