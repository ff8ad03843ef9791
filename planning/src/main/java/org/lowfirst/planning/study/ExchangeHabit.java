package org.lowfirst.planning.study;

import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;

/**
 * When supplies are sent for and how many leave together. The lowest always leave.
 *
 * @param when what makes the bench send for supplies
 * @param together how many come with one delivery
 * @param residual for {@link When#LOWEST_AT_RESIDUAL} only: reading at the bench's temperature of the day
 */
public record ExchangeHabit(
        When when, int together, @Nullable GaugePressure residual) {

    /** The lowest one, when a bottle is there that cannot be finished. */
    public static ExchangeHabit oneAtATime() {
        return new ExchangeHabit(When.A_FILL_WOULD_FAIL, 1, null);
    }

    /** The lowest two, when a bottle is there that cannot be finished. */
    public static ExchangeHabit inPairs() {
        return new ExchangeHabit(When.A_FILL_WOULD_FAIL, 2, null);
    }

    /** The lowest, as soon as the bank could not finish the most demanding bottle any more. */
    public static ExchangeHabit whenTheTopCannotFinish(int together) {
        return new ExchangeHabit(When.THE_NEXT_MIGHT_FAIL, together, null);
    }

    /** The lowest, as soon as it has come down to a residual. */
    public static ExchangeHabit atResidual(GaugePressure residual, int together) {
        return new ExchangeHabit(When.LOWEST_AT_RESIDUAL, together, residual);
    }
}
