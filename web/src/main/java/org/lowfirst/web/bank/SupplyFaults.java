package org.lowfirst.web.bank;

import java.util.Map;
import java.util.Optional;
import org.lowfirst.station.Rule;

/** Which field of a supply's form a broken rule is about. */
final class SupplyFaults {

    private static final Map<Rule, String> FIELDS = Map.ofEntries(
            Map.entry(Rule.NAME_EMPTY, "name"),
            Map.entry(Rule.NAME_TAKEN, "name"),
            Map.entry(Rule.WATER_VOLUME_NOT_ABOVE_ZERO, "volume"),
            Map.entry(Rule.WATER_VOLUME_UNUSUAL, "volume"),
            Map.entry(Rule.SERVICE_PRESSURE_UNUSUAL, "marked"),
            Map.entry(Rule.SERVICE_PRESSURE_IMPOSSIBLE, "marked"),
            Map.entry(Rule.SERVICE_PRESSURE_NOT_ABOVE_ZERO, "marked"),
            Map.entry(Rule.READING_BELOW_ZERO, "reading"),
            Map.entry(Rule.READING_ABOVE_TEST_PRESSURE, "reading"),
            Map.entry(Rule.READING_ABOVE_FULL_SCALE, "reading"),
            Map.entry(Rule.READING_LOOKS_LIKE_OTHER_UNIT, "reading"),
            Map.entry(Rule.TEMPERATURE_OUT_OF_RANGE, "temperature"),
            Map.entry(Rule.REASON_EMPTY, "reason"));

    private SupplyFaults() {}

    static String field(Optional<Rule> rule) {
        return rule.map(broken -> FIELDS.getOrDefault(broken, "form")).orElse("form");
    }
}
