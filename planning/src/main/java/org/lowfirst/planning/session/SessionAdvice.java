package org.lowfirst.planning.session;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What to make of a plan.
 *
 * @param habits what the usual habits would come to
 * @param reasons why bottles come in this order
 * @param moreReady what would make more bottles ready; null when all are
 */
public record SessionAdvice(
        List<HabitResult> habits,
        List<OrderReason> reasons,
        @Nullable MoreReady moreReady) {

    public SessionAdvice {
        habits = List.copyOf(habits);
        reasons = List.copyOf(reasons);
    }
}
