package org.lowfirst.planning.contents;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a reading, or a stage, means.
 *
 * @param code the verdict
 * @param cylinder the cylinder it is about
 * @param other the other cylinder or gauge it involves; null when none
 * @param cause the explanation that fits best
 * @param alsoPossible explanations that fit nearly as well
 * @param evidence the numbers
 * @param chanceOfNoise chance that noise alone would stand out at least this much at one look, for this kind of explanation
 * @param advice what to do
 */
public record Verdict(
        VerdictCode code,
        String cylinder,
        @Nullable String other,
        Cause cause,
        List<Cause> alsoPossible,
        Evidence evidence,
        double chanceOfNoise,
        Advice advice) {

    public Verdict {
        alsoPossible = List.copyOf(alsoPossible);
    }
}
