package org.lowfirst.station.rules;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/** Collects the settings of a rule for writing, in order. */
final class RuleWords {

    private final Map<String, String> words = new LinkedHashMap<>();

    static RuleWords none() {
        return new RuleWords();
    }

    RuleWords with(String key, String value) {
        words.put(key, value);
        return this;
    }

    RuleWords with(String key, int value) {
        return with(key, Integer.toString(value));
    }

    RuleWords with(AppliesTo cylinders) {
        if (!cylinders.specifications().isEmpty()) {
            with(RuleSettings.SPECIFICATIONS, String.join(", ", cylinders.sortedSpecifications()));
        }
        if (!cylinders.materials().isEmpty()) {
            with(
                    RuleSettings.MATERIALS,
                    cylinders.sortedMaterials().stream().map(RuleSettings::word).collect(Collectors.joining(", ")));
        }
        return this;
    }

    Map<String, String> asMap() {
        return words;
    }
}
