package org.lowfirst.planning.study;

/** Mean number of bottles on each day of a year of 365 days; the first day is 1 January, a Monday. Immutable. */
final class Calendar {

    static final int DAYS = 365;
    private static final int[] LENGTHS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

    private final double[] ofDay = new double[DAYS];
    private final double[] ofWeekday = new double[7];

    Calendar(Demand demand) {
        double weekdays =
                demand.weekdays().stream().mapToDouble(Double::doubleValue).sum();
        for (int i = 0; i < 7; i++) {
            ofWeekday[i] = 7.0 * demand.weekdays().get(i) / weekdays;
        }
        double sum = 0.0;
        int day = 0;
        for (int month = 0; month < LENGTHS.length; month++) {
            for (int i = 0; i < LENGTHS[month]; i++) {
                ofDay[day] = demand.months().get(month);
                sum += ofDay[day++];
            }
        }
        for (int i = 0; i < DAYS; i++) {
            ofDay[i] *= demand.fillsPerYear() / sum;
        }
    }

    /** Mean number of bottles on a day counted from the first. */
    double meanOn(int day) {
        return ofDay[day % DAYS] * ofWeekday[day % 7];
    }

    /** Share of the year's bottles that come on a day of the year. */
    double weightOf(int dayOfYear) {
        return ofDay[dayOfYear];
    }
}
