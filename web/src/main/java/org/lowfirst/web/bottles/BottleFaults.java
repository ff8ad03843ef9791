package org.lowfirst.web.bottles;

import java.util.Map;
import java.util.Optional;
import org.lowfirst.station.Rule;

/** Which field of a bottle's form a broken rule is about. */
final class BottleFaults {

    private static final Map<Rule, String> FIELDS = Map.ofEntries(
            Map.entry(Rule.NAME_EMPTY, "name"),
            Map.entry(Rule.NAME_TAKEN, "name"),
            Map.entry(Rule.WATER_VOLUME_NOT_ABOVE_ZERO, "volume"),
            Map.entry(Rule.WATER_VOLUME_UNUSUAL, "volume"),
            Map.entry(Rule.SERVICE_PRESSURE_UNUSUAL, "marked"),
            Map.entry(Rule.SERVICE_PRESSURE_IMPOSSIBLE, "marked"),
            Map.entry(Rule.USUAL_TARGET_ABOVE_SERVICE_PRESSURE, "usual"),
            Map.entry(Rule.TARGET_NOT_ABOVE_ZERO, "usual"),
            Map.entry(Rule.SERVICE_PRESSURE_NOT_ABOVE_ZERO, "marked"),
            Map.entry(Rule.TARGET_ABOVE_SERVICE_PRESSURE, "usual"),
            Map.entry(Rule.REASON_EMPTY, "reason"));

    private BottleFaults() {}

    static String field(Optional<Rule> rule) {
        return rule.map(broken -> FIELDS.getOrDefault(broken, "form")).orElse("form");
    }
}
