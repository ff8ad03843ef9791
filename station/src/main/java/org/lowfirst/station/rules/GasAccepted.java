package org.lowfirst.station.rules;

import java.util.List;
import java.util.Map;

/** The cylinder must be labelled for one of these gases. */
public record GasAccepted(RuleHeading heading, List<String> gases) implements FillRule {

    public GasAccepted {
        gases = List.copyOf(gases);
    }

    static GasAccepted of(RuleHeading heading, RuleSettings settings) {
        return new GasAccepted(heading, settings.names("gases"));
    }

    @Override
    public RuleKind kind() {
        return RuleKind.GAS;
    }

    @Override
    public Map<String, String> settings() {
        return RuleWords.none().with("gases", String.join(", ", gases)).asMap();
    }

    @Override
    public List<Finding> judge(CylinderFacts facts, Setting setting) {
        Finding unknown = Finding.refuse(heading, Advice.ENTER_GAS, Measure.NOTHING, Measure.NOTHING);
        return List.of(
                AcceptedNames.judge(heading, facts.service().gas(), gases, unknown, Advice.DO_NOT_FILL_OTHER_GAS));
    }
}
