package org.lowfirst.station.rules;

import java.util.List;
import java.util.Map;

/** A cylinder that has held something else is cleaned for oxygen before it is filled again. */
public record OtherService(RuleHeading heading) implements FillRule {

    static OtherService of(RuleHeading heading, RuleSettings settings) {
        return new OtherService(heading);
    }

    @Override
    public RuleKind kind() {
        return RuleKind.OTHER_SERVICE;
    }

    @Override
    public Map<String, String> settings() {
        return Map.of();
    }

    @Override
    public List<Finding> judge(CylinderFacts facts, Setting setting) {
        return List.of(Answers.judge(
                heading,
                facts.service().otherService(),
                Answer.NO,
                Advice.CLEAN_FOR_OXYGEN,
                Advice.ASK_ABOUT_OTHER_SERVICE));
    }
}
