package org.lowfirst.station.rules;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;

/**
 * What counts as service pressure when none is marked: a fixed pressure, or a fraction of the test pressure. Exactly one of
 * the two is set.
 */
public record AssumedServicePressure(
        RuleHeading heading,
        AppliesTo cylinders,
        @Nullable GaugePressure fixed,
        @Nullable Fraction ofTestPressure) implements FillRule {

    public AssumedServicePressure {
        if ((fixed == null) == (ofTestPressure == null)) {
            throw new IllegalArgumentException(
                    "Rule " + heading.id() + " must have either \"pressure\" or \"of-test-pressure\", and not both.");
        }
    }

    static AssumedServicePressure of(RuleHeading heading, RuleSettings settings) {
        AppliesTo cylinders = settings.appliesTo();
        GaugePressure fixed = settings.findText("pressure") == null ? null : settings.pressure("pressure");
        Fraction fraction =
                settings.findText("of-test-pressure") == null ? null : settings.fraction("of-test-pressure");
        return new AssumedServicePressure(heading, cylinders, fixed, fraction);
    }

    @Override
    public RuleKind kind() {
        return RuleKind.ASSUMED_SERVICE_PRESSURE;
    }

    @Override
    public Map<String, String> settings() {
        RuleWords words = RuleWords.none().with(cylinders);
        if (fixed != null) {
            words.with("pressure", WrittenQuantity.write(fixed));
        }
        if (ofTestPressure != null) {
            words.with("of-test-pressure", ofTestPressure.toString());
        }
        return words.asMap();
    }

    @Nullable
    GaugePressure assume(Nameplate plate) {
        if (!cylinders.matches(plate)) {
            return null;
        }
        GaugePressure test = plate.testPressure();
        if (ofTestPressure != null) {
            return test == null ? null : ofTestPressure.of(test);
        }
        return fixed;
    }

    @Override
    public List<Finding> judge(CylinderFacts facts, Setting setting) {
        if (facts.nameplate().servicePressure() != null) {
            return List.of();
        }
        GaugePressure assumed = assume(facts.nameplate());
        return assumed == null
                ? List.of()
                : List.of(Finding.warn(
                        heading,
                        Advice.CHECK_ASSUMED_SERVICE_PRESSURE,
                        Measure.NOTHING,
                        new Measure.OfPressure(
                                assumed,
                                setting.required(ServicePressureLimit.class).at())));
    }
}
