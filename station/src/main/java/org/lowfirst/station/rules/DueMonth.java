package org.lowfirst.station.rules;

import java.util.Map;

/** To which day a month of a test or of an end of life is good. */
public record DueMonth(RuleHeading heading, DuePoint validTo) implements FillRule {

    static DueMonth of(RuleHeading heading, RuleSettings settings) {
        return new DueMonth(heading, settings.choice("valid-to", DuePoint.class));
    }

    @Override
    public RuleKind kind() {
        return RuleKind.DUE_MONTH;
    }

    @Override
    public Map<String, String> settings() {
        return RuleWords.none().with("valid-to", RuleSettings.word(validTo)).asMap();
    }
}
