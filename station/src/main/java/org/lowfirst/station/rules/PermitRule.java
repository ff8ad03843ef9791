package org.lowfirst.station.rules;

import java.time.YearMonth;
import java.util.List;
import java.util.Map;

/** Cylinders whose interval and life stand in their own permit: the terms are entered from it, with its number. */
public record PermitRule(RuleHeading heading, AppliesTo cylinders) implements FillRule {

    public PermitRule {
        FillRule.requireNeverOverridden(heading);
    }

    static PermitRule of(RuleHeading heading, RuleSettings settings) {
        return new PermitRule(heading, settings.appliesTo());
    }

    @Override
    public RuleKind kind() {
        return RuleKind.PERMIT;
    }

    @Override
    public Map<String, String> settings() {
        return RuleWords.none().with(cylinders).asMap();
    }

    @Override
    public List<Finding> judge(CylinderFacts facts, Setting setting) {
        if (!cylinders.matches(facts.nameplate())) {
            return List.of();
        }
        PermitTerms terms = facts.permitTerms();
        if (terms == null) {
            return List.of(Finding.refuse(heading, Advice.ENTER_PERMIT_TERMS, Measure.NOTHING, Measure.NOTHING));
        }
        YearMonth made = facts.nameplate().made();
        return List.of(Life.finding(heading, made, terms.lifeYears(), setting));
    }
}
