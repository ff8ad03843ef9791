package org.lowfirst.station.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;

/**
 * The settled contents may not exceed the service pressure at the reference temperature.
 *
 * @param at reference temperature of the book
 */
public record ServicePressureLimit(RuleHeading heading, Temperature at) implements FillRule {

    public ServicePressureLimit {
        FillRule.requireNeverOverridden(heading);
    }

    static ServicePressureLimit of(RuleHeading heading, RuleSettings settings) {
        return new ServicePressureLimit(heading, settings.temperature("at"));
    }

    @Override
    public RuleKind kind() {
        return RuleKind.SERVICE_PRESSURE;
    }

    @Override
    public Map<String, String> settings() {
        return RuleWords.none().with("at", WrittenQuantity.write(at)).asMap();
    }

    @Override
    public List<PressureLimit> limits(CylinderFacts facts, Setting setting) {
        GaugePressure rated = setting.ratedPressure(facts);
        return rated == null ? List.of() : List.of(new PressureLimit(heading, new PressureAt(rated, at)));
    }

    @Override
    public List<Finding> judge(CylinderFacts facts, Setting setting) {
        List<Finding> findings = new ArrayList<>();
        List<PressureLimit> limits = limits(facts, setting);
        if (limits.isEmpty()) {
            return List.of(Finding.refuse(heading, Advice.ENTER_SERVICE_PRESSURE, Measure.NOTHING, Measure.NOTHING));
        }
        PlusRating plus = setting.plusRating(facts);
        for (PressureLimit limit : limits) {
            Finding finding = WantedContents.against(limit, facts);
            findings.add(plus == null ? finding : finding.basedOn(plus.heading()));
        }
        if (facts.plusEntry() != null && plus == null) {
            findings.add(Finding.warn(heading, whyPlusDoesNotCount(facts, setting), plusMark(facts), Measure.NOTHING));
        }
        return findings;
    }

    private static Advice whyPlusDoesNotCount(CylinderFacts facts, Setting setting) {
        boolean listed = setting.rules(PlusRating.class)
                .anyMatch(rule -> rule.cylinders().matches(facts.nameplate()));
        return listed ? Advice.PLUS_NOT_MARKED : Advice.PLUS_NOT_FOR_THIS_SPECIFICATION;
    }

    private static Measure plusMark(CylinderFacts facts) {
        String code = facts.nameplate().specification();
        return code == null ? Measure.NOTHING : new Measure.OfWord(code);
    }
}
