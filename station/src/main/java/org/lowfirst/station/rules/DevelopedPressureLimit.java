package org.lowfirst.station.rules;

import java.util.List;
import java.util.Map;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;

/** The same contents made hot may not exceed a fraction of a marked pressure. */
public record DevelopedPressureLimit(
        RuleHeading heading, AppliesTo cylinders, Temperature at, Fraction factor, PressureBasis basis)
        implements FillRule {

    public DevelopedPressureLimit {
        FillRule.requireNeverOverridden(heading);
    }

    static DevelopedPressureLimit of(RuleHeading heading, RuleSettings settings) {
        return new DevelopedPressureLimit(
                heading,
                settings.appliesTo(),
                settings.temperature("at"),
                settings.fraction("factor"),
                settings.choice("of", PressureBasis.class));
    }

    @Override
    public RuleKind kind() {
        return RuleKind.DEVELOPED_PRESSURE;
    }

    @Override
    public Map<String, String> settings() {
        return RuleWords.none()
                .with(cylinders)
                .with("at", WrittenQuantity.write(at))
                .with("factor", factor.toString())
                .with("of", RuleSettings.word(basis))
                .asMap();
    }

    @Override
    public List<PressureLimit> limits(CylinderFacts facts, Setting setting) {
        if (!cylinders.matches(facts.nameplate())) {
            return List.of();
        }
        GaugePressure whole = switch (basis) {
            case SERVICE_PRESSURE -> setting.ratedPressure(facts);
            case TEST_PRESSURE -> facts.nameplate().testPressure();
        };
        return whole == null ? List.of() : List.of(new PressureLimit(heading, new PressureAt(factor.of(whole), at)));
    }

    @Override
    public List<Finding> judge(CylinderFacts facts, Setting setting) {
        if (!cylinders.matches(facts.nameplate())) {
            return List.of();
        }
        List<PressureLimit> limits = limits(facts, setting);
        if (limits.isEmpty()) {
            Advice advice =
                    basis == PressureBasis.TEST_PRESSURE ? Advice.ENTER_TEST_PRESSURE : Advice.ENTER_SERVICE_PRESSURE;
            return List.of(Finding.refuse(heading, advice, Measure.NOTHING, Measure.NOTHING));
        }
        return limits.stream()
                .map(limit -> WantedContents.against(limit, facts))
                .toList();
    }
}
