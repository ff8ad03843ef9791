package org.lowfirst.station.rules;

import java.util.List;
import java.util.Map;

/** Something to be shown with every cylinder of a kind. It never refuses. */
public record Remark(RuleHeading heading, AppliesTo cylinders, Advice advice) implements FillRule {

    static Remark of(RuleHeading heading, RuleSettings settings) {
        return new Remark(heading, settings.appliesTo(), settings.choice("advice", Advice.class));
    }

    @Override
    public RuleKind kind() {
        return RuleKind.REMARK;
    }

    @Override
    public Map<String, String> settings() {
        return RuleWords.none()
                .with(cylinders)
                .with("advice", RuleSettings.word(advice))
                .asMap();
    }

    @Override
    public List<Finding> judge(CylinderFacts facts, Setting setting) {
        return cylinders.matches(facts.nameplate())
                ? List.of(Finding.warn(heading, advice, Measure.NOTHING, Measure.NOTHING))
                : List.of();
    }
}
