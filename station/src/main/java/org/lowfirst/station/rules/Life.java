package org.lowfirst.station.rules;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;

/** Whether today lies within a life counted from the month made. */
final class Life {

    private Life() {}

    static Finding finding(RuleHeading rule, @Nullable YearMonth made, int years, Setting setting) {
        if (made == null) {
            return Finding.refuse(rule, Advice.ENTER_MONTH_MADE, Measure.NOTHING, Measure.NOTHING);
        }
        LocalDate today = setting.today();
        LocalDate lastDay = setting.lastDay(made, years);
        Measure measured = new Measure.OfDate(today);
        Measure limit = new Measure.OfDate(lastDay);
        if (today.isAfter(lastDay)) {
            return Finding.refuse(rule, Advice.RETIRE_LIFE_OVER, measured, limit);
        }
        if (ChronoUnit.DAYS.between(today, lastDay) <= setting.notice().days()) {
            return Finding.warn(rule, Advice.LIFE_ENDS_SOON, measured, limit);
        }
        return Finding.allow(rule, measured, limit);
    }
}
