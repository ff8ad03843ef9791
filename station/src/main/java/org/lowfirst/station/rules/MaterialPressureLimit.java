package org.lowfirst.station.rules;

import java.util.List;
import java.util.Map;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;

/** Cylinders of a kind hold oxygen at no more than this, whatever is marked. */
public record MaterialPressureLimit(RuleHeading heading, AppliesTo cylinders, GaugePressure pressure, Temperature at)
        implements FillRule {

    public MaterialPressureLimit {
        FillRule.requireNeverOverridden(heading);
    }

    static MaterialPressureLimit of(RuleHeading heading, RuleSettings settings) {
        return new MaterialPressureLimit(
                heading, settings.appliesTo(), settings.pressure("pressure"), settings.temperature("at"));
    }

    @Override
    public RuleKind kind() {
        return RuleKind.MATERIAL_PRESSURE;
    }

    @Override
    public Map<String, String> settings() {
        return RuleWords.none()
                .with(cylinders)
                .with("pressure", WrittenQuantity.write(pressure))
                .with("at", WrittenQuantity.write(at))
                .asMap();
    }

    @Override
    public List<PressureLimit> limits(CylinderFacts facts, Setting setting) {
        return cylinders.matches(facts.nameplate())
                ? List.of(new PressureLimit(heading, new PressureAt(pressure, at)))
                : List.of();
    }

    @Override
    public List<Finding> judge(CylinderFacts facts, Setting setting) {
        return limits(facts, setting).stream()
                .map(limit -> WantedContents.against(limit, facts))
                .toList();
    }
}
