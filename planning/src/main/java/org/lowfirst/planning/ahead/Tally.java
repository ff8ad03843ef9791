package org.lowfirst.planning.ahead;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Days and fills of a history, counted by weekday and month. Immutable. */
final class Tally {

    static final int WEEKDAYS = 7;
    static final int MONTHS = 12;

    private final double[][] days = new double[WEEKDAYS][MONTHS];
    private final double[][] fills = new double[WEEKDAYS][MONTHS];
    private final Map<LocalDate, Integer> byDay = new HashMap<>();
    private final int daysInAll;
    private final int fillsInAll;

    /** At most the last {@code longest_d} days before {@code today}. */
    Tally(UseHistory history, LocalDate today, int longest_d) {
        LocalDate oldest = today.minusDays(longest_d);
        int counted = 0;
        for (int i = 0; i < history.days(); i++) {
            LocalDate day = history.from().plusDays(i);
            if (!day.isBefore(oldest)) {
                days[weekday(day)][month(day)]++;
                counted++;
            }
        }
        for (FilledOn filled : recent(history.fills(), oldest)) {
            fills[weekday(filled.date())][month(filled.date())]++;
            byDay.merge(filled.date(), 1, Integer::sum);
        }
        daysInAll = counted;
        fillsInAll = byDay.values().stream().mapToInt(Integer::intValue).sum();
    }

    static List<FilledOn> recent(List<FilledOn> fills, LocalDate oldest) {
        return fills.stream().filter(filled -> !filled.date().isBefore(oldest)).toList();
    }

    static int weekday(LocalDate day) {
        return day.getDayOfWeek().getValue() - 1;
    }

    static int month(LocalDate day) {
        return day.getMonthValue() - 1;
    }

    double days(int weekday, int month) {
        return days[weekday][month];
    }

    double fills(int weekday, int month) {
        return fills[weekday][month];
    }

    int days() {
        return daysInAll;
    }

    int fills() {
        return fillsInAll;
    }

    /** The part of the logarithm of the likelihood of a shape of good and bad days that the means do not change. */
    double logLikelihood(double shape) {
        double sum = 0.0;
        for (int count : byDay.values()) {
            for (int i = 0; i < count; i++) {
                sum += Math.log(shape + i);
            }
        }
        return sum;
    }
}
