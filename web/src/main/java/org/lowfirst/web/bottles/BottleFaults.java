package org.lowfirst.web.bottles;

import java.util.Map;
import java.util.Optional;
import org.lowfirst.station.Rule;

/** Which field of a bottle's form a broken rule is about. */
final class BottleFaults {

    private static final Map<Rule, String> FIELDS = Map.of(
            Rule.NAME_EMPTY, "name",
            Rule.NAME_TAKEN, "name",
            Rule.WATER_VOLUME_NOT_ABOVE_ZERO, "volume",
            Rule.SERVICE_PRESSURE_NOT_ABOVE_ZERO, "marked",
            Rule.TARGET_ABOVE_SERVICE_PRESSURE, "usual",
            Rule.REASON_EMPTY, "reason");

    private BottleFaults() {}

    static String field(Optional<Rule> rule) {
        return rule.map(broken -> FIELDS.getOrDefault(broken, "form")).orElse("form");
    }
}
