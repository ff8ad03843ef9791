package org.lowfirst.station.rules;

import java.util.List;
import java.util.Map;

/**
 * Alloys that need an eddy-current test at each periodic test.
 *
 * @param suffix letters after the test date that show it was done
 */
public record AlloyInspection(RuleHeading heading, AppliesTo cylinders, String suffix) implements FillRule {

    static AlloyInspection of(RuleHeading heading, RuleSettings settings) {
        return new AlloyInspection(heading, settings.appliesTo(), settings.text("suffix"));
    }

    @Override
    public RuleKind kind() {
        return RuleKind.ALLOY;
    }

    @Override
    public Map<String, String> settings() {
        return RuleWords.none().with(cylinders).with("suffix", suffix).asMap();
    }

    @Override
    public List<Finding> judge(CylinderFacts facts, Setting setting) {
        if (!cylinders.matches(facts.nameplate())) {
            return List.of();
        }
        TestMark mark = facts.lastTest();
        Measure limit = new Measure.OfWord(suffix);
        Measure measured =
                mark == null || mark.suffix().isEmpty() ? Measure.NOTHING : new Measure.OfWord(mark.suffix());
        return List.of(
                mark != null && mark.suffix().equals(suffix)
                        ? Finding.allow(heading, measured, limit)
                        : Finding.warn(heading, Advice.ASK_FOR_EDDY_CURRENT_TEST, measured, limit));
    }
}
