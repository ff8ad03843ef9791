package org.lowfirst.planning.ahead;

import java.util.List;

/**
 * How long the bank lasts if nothing is exchanged.
 *
 * @param fillsLeft bottles finished before the first that cannot be
 * @param daysLeft whole days before the day of that one; {@code longestDays} stands for that and more
 * @param longestDays days looked ahead
 * @param fillsPerWeek expected in the coming four weeks, planned events included
 * @param order when to order
 * @param knowledge what this rests on
 * @param days fills left on the coming days, for a picture; ends when the bank is hardly ever good for another fill
 */
public record Forecast(
        Band fillsLeft,
        Band daysLeft,
        int longestDays,
        double fillsPerWeek,
        OrderAdvice order,
        Knowledge knowledge,
        List<DayAhead> days)
        implements AheadOutcome {

    public Forecast {
        days = List.copyOf(days);
    }
}
