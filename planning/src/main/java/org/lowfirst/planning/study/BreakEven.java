package org.lowfirst.planning.study;

import org.jspecify.annotations.Nullable;

/**
 * Where an alternative becomes as cheap as another when one thing changes and all else stays. Null where no value above zero
 * does it.
 *
 * @param alternative name of the one
 * @param against name of the other
 * @param contentFactor all prices of supplies multiplied by this
 * @param deliveryFactor the price of a delivery multiplied by this
 * @param rentFactor all rents multiplied by this
 * @param fillsPerYear this many fills a year, supplies and deliveries per fill staying the same
 */
public record BreakEven(
        String alternative,
        String against,
        @Nullable Double contentFactor,
        @Nullable Double deliveryFactor,
        @Nullable Double rentFactor,
        @Nullable Double fillsPerYear) {

    static BreakEven between(double fillsPerYear, AlternativeResult one, AlternativeResult other) {
        CostParts a = one.parts();
        CostParts b = other.parts();
        if (a == null || b == null) {
            throw new IllegalArgumentException("Both alternatives must have made a fill.");
        }
        double yearly = a.rent() + a.purchases() - b.rent() - b.purchases();
        double perFill = a.sum() - b.sum() - yearly;
        Double scale = factor(a.sum() - b.sum(), yearly);
        return new BreakEven(
                one.alternative().name(),
                other.alternative().name(),
                factor(a.sum() - b.sum(), a.content() - b.content()),
                factor(a.sum() - b.sum(), a.deliveries() - b.deliveries()),
                factor(a.sum() - b.sum(), a.rent() - b.rent()),
                scale == null || perFill == 0.0 ? null : Double.valueOf(fillsPerYear / scale));
    }

    /** x so that the difference vanishes when the part of it that is {@code changing} is multiplied by x. */
    private static @Nullable Double factor(double difference, double changing) {
        double factor = 1.0 - difference / changing;
        return factor > 0.0 && Double.isFinite(factor) ? factor : null;
    }
}
