package org.lowfirst.station.rules;

import java.util.List;
import java.util.Map;

/**
 * Cylinders with a fixed number of fills in their life.
 *
 * @param fills above 0
 */
public record CycleLimit(RuleHeading heading, AppliesTo cylinders, int fills) implements FillRule {

    public CycleLimit {
        FillRule.requireNeverOverridden(heading);
    }

    static CycleLimit of(RuleHeading heading, RuleSettings settings) {
        return new CycleLimit(heading, settings.appliesTo(), settings.countAboveZero("fills"));
    }

    @Override
    public RuleKind kind() {
        return RuleKind.CYCLES;
    }

    @Override
    public Map<String, String> settings() {
        return RuleWords.none().with(cylinders).with("fills", fills).asMap();
    }

    @Override
    public List<Finding> judge(CylinderFacts facts, Setting setting) {
        if (!cylinders.matches(facts.nameplate())) {
            return List.of();
        }
        Integer used = facts.use().fills();
        Measure limit = new Measure.OfFills(fills);
        if (used == null) {
            return List.of(Finding.refuse(heading, Advice.ENTER_FILLS_SO_FAR, Measure.NOTHING, limit));
        }
        Measure measured = new Measure.OfFills(used);
        if (used >= fills) {
            return List.of(Finding.refuse(heading, Advice.RETIRE_FILLS_USED_UP, measured, limit));
        }
        if (fills - used <= setting.notice().fills()) {
            return List.of(Finding.warn(heading, Advice.FEW_FILLS_LEFT, measured, limit));
        }
        return List.of(Finding.allow(heading, measured, limit));
    }
}
