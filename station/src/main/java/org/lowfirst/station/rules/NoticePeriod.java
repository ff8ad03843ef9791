package org.lowfirst.station.rules;

import java.util.Map;

/**
 * How early a limit is announced.
 *
 * @param days warn with this many days left or fewer
 * @param fills warn with this many fills left or fewer
 */
public record NoticePeriod(RuleHeading heading, int days, int fills) implements FillRule {

    static NoticePeriod of(RuleHeading heading, RuleSettings settings) {
        return new NoticePeriod(heading, settings.count("days"), settings.count("fills"));
    }

    @Override
    public RuleKind kind() {
        return RuleKind.NOTICE;
    }

    @Override
    public Map<String, String> settings() {
        return RuleWords.none().with("days", days).with("fills", fills).asMap();
    }
}
