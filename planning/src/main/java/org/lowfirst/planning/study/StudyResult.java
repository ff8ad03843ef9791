package org.lowfirst.planning.study;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a study found.
 *
 * @param alternatives in the order of the request
 * @param cheapest name of the alternative with the lowest mean cost per fill; null when none has made a fill
 * @param breakEvens each other alternative against the cheapest
 * @param runs runs done
 * @param runsAsked runs asked for; more than {@code runs} when the study was ended early
 * @param worstImbalance largest share of its gas that any run lost track of; rounding only
 */
public record StudyResult(
        List<AlternativeResult> alternatives,
        @Nullable String cheapest,
        List<BreakEven> breakEvens,
        long runs,
        long runsAsked,
        double worstImbalance)
        implements StudyOutcome {

    public StudyResult {
        alternatives = List.copyOf(alternatives);
        breakEvens = List.copyOf(breakEvens);
    }
}
