package org.lowfirst.station.rules;

import java.util.List;
import java.util.Map;

/** The cylinder must be recorded as cleaned for oxygen. */
public record OxygenCleaning(RuleHeading heading) implements FillRule {

    static OxygenCleaning of(RuleHeading heading, RuleSettings settings) {
        return new OxygenCleaning(heading);
    }

    @Override
    public RuleKind kind() {
        return RuleKind.OXYGEN_CLEAN;
    }

    @Override
    public Map<String, String> settings() {
        return Map.of();
    }

    @Override
    public List<Finding> judge(CylinderFacts facts, Setting setting) {
        return List.of(Answers.judge(
                heading,
                facts.service().oxygenClean(),
                Answer.YES,
                Advice.CLEAN_FOR_OXYGEN,
                Advice.SHOW_CLEANING_RECORD));
    }
}
