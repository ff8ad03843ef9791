package org.lowfirst.planning.study;

import org.jspecify.annotations.Nullable;

/**
 * Fills, supplies and deliveries.
 *
 * @param fillsPerYear bottles brought to their stop
 * @param missedPerYear bottles that could not be
 * @param outOfReachPerYear those of them that no bank of this size could, full as delivered
 * @param suppliesPerYear supplies received
 * @param deliveriesPerYear deliveries
 * @param fillsPerSupply fills made with one delivered supply; null when none was delivered
 * @param gasFromBefore share of the gas used that was on site when the counted years began and is not there at their end; below
 *     zero when more is there than before
 */
public record Usage(
        Estimate fillsPerYear,
        Estimate missedPerYear,
        double outOfReachPerYear,
        double suppliesPerYear,
        double deliveriesPerYear,
        @Nullable Estimate fillsPerSupply,
        double gasFromBefore) {

    /** Common practice, no source: what an interval of a few hundred runs shows anyway. */
    private static final double NOT_WORTH_SAYING = 0.05;

    /** Whether so much gas is from before the counted years, or stays after them, that the cost per fill says little. */
    public boolean tooShort() {
        return Math.abs(gasFromBefore) > NOT_WORTH_SAYING;
    }
}
