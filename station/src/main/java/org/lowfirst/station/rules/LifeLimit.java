package org.lowfirst.station.rules;

import java.util.List;
import java.util.Map;

/**
 * Cylinders with a fixed life, counted from the month made.
 *
 * @param years [a], above 0
 */
public record LifeLimit(RuleHeading heading, AppliesTo cylinders, int years) implements FillRule {

    public LifeLimit {
        FillRule.requireNeverOverridden(heading);
    }

    static LifeLimit of(RuleHeading heading, RuleSettings settings) {
        return new LifeLimit(heading, settings.appliesTo(), settings.countAboveZero("years"));
    }

    @Override
    public RuleKind kind() {
        return RuleKind.LIFE;
    }

    @Override
    public Map<String, String> settings() {
        return RuleWords.none().with(cylinders).with("years", years).asMap();
    }

    @Override
    public List<Finding> judge(CylinderFacts facts, Setting setting) {
        if (!cylinders.matches(facts.nameplate())) {
            return List.of();
        }
        return List.of(Life.finding(heading, facts.nameplate().made(), years, setting));
    }
}
