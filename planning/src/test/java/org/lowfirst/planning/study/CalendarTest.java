package org.lowfirst.planning.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Season and weekdays keep the number of fills a year. */
final class CalendarTest {

    @Test
    void sevenYearsHoldSevenTimesTheFills() {
        Calendar calendar = new Calendar(Studies.mixed(150));
        double sum = 0;
        for (int day = 0; day < 7 * Calendar.DAYS; day++) {
            sum += calendar.meanOn(day);
        }
        assertThat(sum).isEqualTo(7 * 150, within(1e-9));
    }

    @Test
    void factorsAreRatiosOfDays() {
        Calendar calendar = new Calendar(Studies.mixed(150));
        // 8 January is a Monday like the 1st; the Saturday before has 2.2 / 0.3 times the fills
        assertThat(calendar.meanOn(5) / calendar.meanOn(7)).isEqualTo(2.2 / 0.3, within(1e-12));
        // day 182 is 2 July, a Monday again: 1.7 against January's 0.1
        assertThat(calendar.meanOn(182) / calendar.meanOn(0)).isEqualTo(17.0, within(1e-12));
    }

    @Test
    void drawnBottlesFollowTheCalendar() {
        StudyRequest request = new StudyRequest(
                Studies.REAL,
                Studies.mixed(1_000),
                Studies.PRICES,
                List.of(new Alternative("A", 1, Studies.supply(50, 200), ExchangeHabit.oneAtATime())),
                Extent.of(20, 2, 9));
        Numbers numbers = Numbers.of(request);
        double inJuly = 0;
        double all = 0;
        double before = 0;
        for (long run = 0; run < 20; run++) {
            DrawnDemand drawn = DrawnDemand.of(request, numbers, run);
            before = 0;
            for (int i = 0; i < drawn.count(); i++) {
                assertThat(drawn.time_d(i)).isGreaterThanOrEqualTo(before);
                before = drawn.time_d(i);
                double day = drawn.time_d(i) % Calendar.DAYS;
                inJuly += day >= 181 && day < 212 ? 1 : 0;
                all++;
            }
        }
        assertThat(all / 20 / 21).isEqualTo(1_000, within(50.0));
        double expected =
                31 * 1.7 / (31 * (0.1 + 0.8 + 1.6 + 1.7 + 1.6 + 0.9 + 0.1) + 28 * 0.2 + 30 * (1.2 + 1.7 + 1.3 + 0.4));
        assertThat(inJuly / all).isEqualTo(expected, within(0.003));
    }
}
