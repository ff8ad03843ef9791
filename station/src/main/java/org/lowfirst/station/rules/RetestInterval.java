package org.lowfirst.station.rules;

import java.util.Map;

/**
 * How often cylinders of a kind are tested. {@link PastDue} says what follows.
 *
 * @param years [a], above 0
 */
public record RetestInterval(RuleHeading heading, AppliesTo cylinders, int years) implements FillRule {

    static RetestInterval of(RuleHeading heading, RuleSettings settings) {
        return new RetestInterval(heading, settings.appliesTo(), settings.countAboveZero("years"));
    }

    @Override
    public RuleKind kind() {
        return RuleKind.RETEST;
    }

    @Override
    public Map<String, String> settings() {
        return RuleWords.none().with(cylinders).with("years", years).asMap();
    }
}
