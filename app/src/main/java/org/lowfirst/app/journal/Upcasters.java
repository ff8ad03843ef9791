package org.lowfirst.app.journal;

import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Turns payloads of older versions into today's, one version at a time. Each step is a pure function and is never changed once
 * a journal may hold what it makes.
 */
record Upcasters(List<Step> steps) {

    /** The steps of this program. None yet: every kind is at its first version. */
    static final Upcasters BUNDLED = new Upcasters(List.of());

    /**
     * @param kind the kind it is for
     * @param from the version it takes; it makes the next one
     */
    record Step(String kind, int from, UnaryOperator<Map<String, @Nullable Object>> change) {}

    Upcasters {
        steps = List.copyOf(steps);
    }

    /** @throws JsonFault when there is no way from one version to the other */
    Map<String, @Nullable Object> upcast(String kind, int from, int to, Map<String, @Nullable Object> payload) {
        Map<String, @Nullable Object> current = payload;
        for (int version = from; version < to; version++) {
            current = step(kind, version).change().apply(current);
        }
        return current;
    }

    private Step step(String kind, int from) {
        return steps.stream()
                .filter(step -> step.kind().equals(kind) && step.from() == from)
                .findFirst()
                .orElseThrow(() -> new JsonFault(kind + " version " + from + " is not known here", 0));
    }
}
