package org.lowfirst.station;

import org.jspecify.annotations.Nullable;

/**
 * The command breaks a rule; nothing was entered. The words for people, advice included, are found by the rule.
 *
 * @param subject what the rule was applied to, as people call it, e.g. the bottle's name
 * @param measured the value found, as typed
 * @param limit the value allowed, as stated
 */
public record Refused(
        Rule rule,
        String subject,
        @Nullable Stated measured,
        @Nullable Stated limit) implements Decision {

    public static Refused of(Rule rule, String subject) {
        return new Refused(rule, subject, null, null);
    }

    /** Whether sending the same again as confirmed would be taken. */
    public boolean confirmable() {
        return rule.confirmable();
    }
}
