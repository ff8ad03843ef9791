package org.lowfirst.station.rules;

import java.util.List;
import java.util.Map;
import org.lowfirst.gas.GaugePressure;

/**
 * A cylinder below the floor, or found with its valve open, may have let moisture or dirt in: inspect and clean first.
 *
 * @param pressure floor; a reading at it passes
 */
public record ResidualFloor(RuleHeading heading, GaugePressure pressure) implements FillRule {

    static ResidualFloor of(RuleHeading heading, RuleSettings settings) {
        return new ResidualFloor(heading, settings.pressure("pressure"));
    }

    @Override
    public RuleKind kind() {
        return RuleKind.RESIDUAL_FLOOR;
    }

    @Override
    public Map<String, String> settings() {
        return RuleWords.none()
                .with("pressure", WrittenQuantity.write(pressure))
                .asMap();
    }

    @Override
    public List<Finding> judge(CylinderFacts facts, Setting setting) {
        GaugePressure reading = facts.use().reading();
        Measure limit = new Measure.OfPressure(pressure, null);
        if (reading == null) {
            return List.of(Finding.refuse(heading, Advice.TAKE_READING, Measure.NOTHING, limit)
                    .withoutOverride());
        }
        Measure measured = new Measure.OfPressure(reading, null);
        if (reading.compareTo(pressure) >= 0 && !facts.use().foundOpen()) {
            return List.of(Finding.allow(heading, measured, limit));
        }
        return List.of(
                facts.use().inspectedEmpty() == null
                        ? Finding.refuse(heading, Advice.INSPECT_AND_CLEAN_FIRST, measured, limit)
                        : Finding.warn(heading, Advice.INSPECTED_SINCE_EMPTY, measured, limit));
    }
}
