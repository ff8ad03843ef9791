package org.lowfirst.station.rules;

import java.util.List;
import java.util.Map;

/** The owner must have agreed to the cylinder being filled here. */
public record OwnerConsent(RuleHeading heading) implements FillRule {

    static OwnerConsent of(RuleHeading heading, RuleSettings settings) {
        return new OwnerConsent(heading);
    }

    @Override
    public RuleKind kind() {
        return RuleKind.CONSENT;
    }

    @Override
    public Map<String, String> settings() {
        return Map.of();
    }

    @Override
    public List<Finding> judge(CylinderFacts facts, Setting setting) {
        return List.of(Answers.judge(
                heading, facts.service().ownerConsents(), Answer.YES, Advice.ASK_OWNER, Advice.ASK_OWNER));
    }
}
