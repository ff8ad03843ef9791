package org.lowfirst.station.rules;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Compares a name with a list, whatever its case and spaces. */
final class AcceptedNames {

    private AcceptedNames() {}

    static Finding judge(
            RuleHeading rule, @Nullable String name, List<String> accepted, Finding unknown, Advice other) {
        if (name == null || name.isBlank()) {
            return unknown;
        }
        Measure measured = new Measure.OfWord(name);
        Measure limit = new Measure.OfWord(String.join(", ", accepted));
        boolean known = accepted.stream().anyMatch(candidate -> plain(candidate).equals(plain(name)));
        return known ? Finding.allow(rule, measured, limit) : Finding.refuse(rule, other, measured, limit);
    }

    private static String plain(String name) {
        return name.strip().replaceAll("[\\s-]+", " ").toLowerCase(Locale.ROOT);
    }
}
