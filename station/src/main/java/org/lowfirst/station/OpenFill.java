package org.lowfirst.station;

import java.time.Instant;
import java.util.List;

/**
 * A fill that has begun and not ended.
 *
 * @param target settled gauge reading wanted
 * @param before bottle gauge before the first stage
 * @param stages what happened so far, in order
 */
public record OpenFill(
        FillId id, BottleId bottle, StatedPressure target, Instant startedAt, Reading before, List<Stage> stages) {

    public OpenFill {
        stages = List.copyOf(stages);
    }

    /** What the bottle's gauge showed last: after the latest stage, or before the first. */
    public Reading bottleNow() {
        return stages.isEmpty() ? before : stages.get(stages.size() - 1).bottleAfter();
    }
}
