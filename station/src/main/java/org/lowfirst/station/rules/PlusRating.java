package org.lowfirst.station.rules;

import java.util.Map;
import org.lowfirst.gas.GaugePressure;

/**
 * Cylinders that may be filled above the marked pressure when the plus is marked, all its conditions are met, and it was
 * entered with its source.
 *
 * @param percent above the marked service pressure [%]
 */
public record PlusRating(RuleHeading heading, AppliesTo cylinders, int percent) implements FillRule {

    static PlusRating of(RuleHeading heading, RuleSettings settings) {
        return new PlusRating(heading, settings.appliesTo(), settings.countAboveZero("percent"));
    }

    @Override
    public RuleKind kind() {
        return RuleKind.PLUS_RATING;
    }

    @Override
    public Map<String, String> settings() {
        return RuleWords.none().with(cylinders).with("percent", percent).asMap();
    }

    GaugePressure raise(GaugePressure marked) {
        return new GaugePressure(marked.pascals() * (100 + percent) / 100);
    }
}
