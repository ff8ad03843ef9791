package org.lowfirst.station;

import org.jspecify.annotations.Nullable;
import org.lowfirst.station.rules.Advice;
import org.lowfirst.station.rules.Finding;
import org.lowfirst.station.rules.Measure;

/**
 * Which refusal of the gate is meant.
 *
 * @param rule id of the rule in its book
 * @param advice what the rule advised
 * @param about the question or mark it is about; null when the rule says it all
 */
public record Refusal(String rule, Advice advice, @Nullable String about) {

    public static Refusal of(Finding finding) {
        String about = finding.measured() instanceof Measure.OfWord word ? word.word() : null;
        return new Refusal(finding.rule().id(), finding.advice(), about);
    }
}
