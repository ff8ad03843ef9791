package org.lowfirst.app.fitness;

import org.lowfirst.station.rules.Advice;
import org.lowfirst.station.rules.OverridePolicy;
import org.lowfirst.station.rules.Verdict;

/**
 * What one rule says of a bottle, in words.
 *
 * @param rule id of the rule in its book
 * @param advice what to do, by its code
 * @param sentence what is so and what to do
 * @param measured what was found; empty when nothing was
 * @param limit what is allowed; empty when the rule has none
 * @param left days or fills left, e.g. "16 days"; empty when nothing is counted
 * @param source where the rule comes from, as the book has it
 * @param status how well that text is known
 * @param override whether a refusal may be set aside
 */
public record FindingLine(
        String rule,
        Verdict verdict,
        Advice advice,
        String sentence,
        String measured,
        String limit,
        String left,
        String source,
        String status,
        OverridePolicy override) {

    /** Whether nobody can set it aside. */
    public boolean stands() {
        return override == OverridePolicy.NEVER;
    }
}
