package org.lowfirst.station.rules;

import java.util.regex.Pattern;

/**
 * What every rule carries whatever it says.
 *
 * @param id name within its book, small letters, digits, dots and hyphens; used in the journal
 * @param country where it holds, e.g. "US", "EU"; "any" for good practice
 * @param source text it comes from, with edition or date where known
 * @param override whether a refusal by it may be set aside
 */
public record RuleHeading(
        String id, String country, String source, RuleStatus status, InForce inForce, OverridePolicy override) {

    private static final Pattern ID = Pattern.compile("[a-z0-9]+([.-][a-z0-9]+)*");

    public RuleHeading {
        if (!ID.matcher(id).matches()) {
            throw new IllegalArgumentException(
                    "The rule id (" + id + ") must be small letters and digits joined by dots or hyphens.");
        }
        if (country.isBlank()) {
            throw new IllegalArgumentException("The country of rule " + id + " must be named.\nMaybe \"any\".");
        }
        if (source.isBlank()) {
            throw new IllegalArgumentException(
                    "The source of rule " + id + " must be named.\nMaybe \"common practice, no source\".");
        }
    }
}
