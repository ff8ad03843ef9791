package org.lowfirst.web.bank;

import java.util.Map;
import java.util.Optional;
import org.lowfirst.station.Rule;

/** Which field of a supply's form a broken rule is about. */
final class SupplyFaults {

    private static final Map<Rule, String> FIELDS = Map.of(
            Rule.NAME_EMPTY, "name",
            Rule.NAME_TAKEN, "name",
            Rule.WATER_VOLUME_NOT_ABOVE_ZERO, "volume",
            Rule.SERVICE_PRESSURE_NOT_ABOVE_ZERO, "marked",
            Rule.READING_BELOW_ZERO, "reading",
            Rule.READING_ABOVE_TEST_PRESSURE, "reading",
            Rule.READING_LOOKS_LIKE_OTHER_UNIT, "reading",
            Rule.TEMPERATURE_OUT_OF_RANGE, "temperature",
            Rule.REASON_EMPTY, "reason");

    private SupplyFaults() {}

    static String field(Optional<Rule> rule) {
        return rule.map(broken -> FIELDS.getOrDefault(broken, "form")).orElse("form");
    }
}
