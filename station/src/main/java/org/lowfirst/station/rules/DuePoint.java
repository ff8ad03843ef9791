package org.lowfirst.station.rules;

import java.time.LocalDate;
import java.time.YearMonth;

/** How long a date marked by the month is good for. */
public enum DuePoint {
    /** To the last day of the month it falls due in. */
    END_OF_DUE_MONTH,
    /** To the last day of the month before. */
    START_OF_DUE_MONTH;

    LocalDate lastDay(YearMonth due) {
        return this == END_OF_DUE_MONTH ? due.atEndOfMonth() : due.atDay(1).minusDays(1);
    }
}
