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
 */
public record Usage(
        Estimate fillsPerYear,
        Estimate missedPerYear,
        double outOfReachPerYear,
        double suppliesPerYear,
        double deliveriesPerYear,
        @Nullable Estimate fillsPerSupply) {}
