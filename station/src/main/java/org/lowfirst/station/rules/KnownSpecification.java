package org.lowfirst.station.rules;

import java.util.List;
import java.util.Map;

/** A cylinder no rule of the book gives a test interval for is not filled until somebody has looked one up. */
public record KnownSpecification(RuleHeading heading) implements FillRule {

    public KnownSpecification {
        FillRule.requireNeverOverridden(heading);
    }

    static KnownSpecification of(RuleHeading heading, RuleSettings settings) {
        return new KnownSpecification(heading);
    }

    @Override
    public RuleKind kind() {
        return RuleKind.KNOWN_SPECIFICATION;
    }

    @Override
    public Map<String, String> settings() {
        return Map.of();
    }

    @Override
    public List<Finding> judge(CylinderFacts facts, Setting setting) {
        if (!(setting.testTerm(facts) instanceof TestTerm.Unknown)) {
            return List.of();
        }
        String code = facts.nameplate().specification();
        boolean nothingRead = code == null && facts.nameplate().material() == WallMaterial.UNKNOWN;
        Advice advice = nothingRead ? Advice.READ_MARKINGS_AGAIN : Advice.ADD_RULE_FOR_SPECIFICATION;
        Measure measured = code == null ? Measure.NOTHING : new Measure.OfWord(code);
        return List.of(Finding.refuse(heading, advice, measured, Measure.NOTHING));
    }
}
