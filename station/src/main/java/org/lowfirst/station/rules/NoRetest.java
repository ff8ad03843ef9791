package org.lowfirst.station.rules;

import java.util.List;
import java.util.Map;

/** Cylinders that need no periodic test. */
public record NoRetest(RuleHeading heading, AppliesTo cylinders) implements FillRule {

    static NoRetest of(RuleHeading heading, RuleSettings settings) {
        return new NoRetest(heading, settings.appliesTo());
    }

    @Override
    public RuleKind kind() {
        return RuleKind.NO_RETEST;
    }

    @Override
    public Map<String, String> settings() {
        return RuleWords.none().with(cylinders).asMap();
    }

    @Override
    public List<Finding> judge(CylinderFacts facts, Setting setting) {
        boolean decides = setting.testTerm(facts) instanceof TestTerm.Never never
                && never.rule().equals(heading);
        return decides ? List.of(Finding.allow(heading, Measure.NOTHING, Measure.NOTHING)) : List.of();
    }
}
