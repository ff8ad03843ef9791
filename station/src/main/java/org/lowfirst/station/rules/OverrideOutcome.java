package org.lowfirst.station.rules;

import java.util.List;
import java.util.Locale;

/** What came of an {@link OverrideRequest}. */
public sealed interface OverrideOutcome {

    /** The refusals were set aside for this fill only. */
    record Overridden(Judgement judgement, OverrideRequest request, List<Finding> setAside) implements OverrideOutcome {

        public Overridden {
            setAside = List.copyOf(setAside);
        }
    }

    /** @param blocking refusals that can never be set aside; empty for the other problems */
    record NotOverridden(Problem problem, List<Finding> blocking) implements OverrideOutcome {

        public NotOverridden {
            blocking = List.copyOf(blocking);
        }
    }

    /** Why nothing was set aside. */
    enum Problem {
        NOTHING_REFUSED,
        NEVER_OVERRIDDEN,
        SAME_PERSON,
        SECOND_HAS_NO_RIGHT,
        REASON_EMPTY
    }

    /** Decides a request. All refusals are set aside, or none. */
    static OverrideOutcome decide(Judgement judgement, OverrideRequest request) {
        List<Finding> refusals = judgement.refusals();
        if (refusals.isEmpty()) {
            return refused(Problem.NOTHING_REFUSED);
        }
        List<Finding> blocking = refusals.stream()
                .filter(finding -> finding.override() == OverridePolicy.NEVER)
                .toList();
        if (!blocking.isEmpty()) {
            return new NotOverridden(Problem.NEVER_OVERRIDDEN, blocking);
        }
        if (sameName(request.filler(), request.second())) {
            return refused(Problem.SAME_PERSON);
        }
        if (!request.secondMayOverride()) {
            return refused(Problem.SECOND_HAS_NO_RIGHT);
        }
        if (request.reason().isBlank()) {
            return refused(Problem.REASON_EMPTY);
        }
        return new Overridden(judgement, request, refusals);
    }

    private static OverrideOutcome refused(Problem problem) {
        return new NotOverridden(problem, List.of());
    }

    private static boolean sameName(String one, String other) {
        return one.strip().toLowerCase(Locale.ROOT).equals(other.strip().toLowerCase(Locale.ROOT));
    }
}
