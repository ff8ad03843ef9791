package org.lowfirst.station;

import org.jspecify.annotations.Nullable;

/** What can be entered about equipment and readiness. Every cylinder in the fact is known. */
final class CareRules {

    private CareRules() {}

    static @Nullable Refused check(CareFact fact) {
        if (fact instanceof CareFact.UpkeepEnded f) {
            if (f.equipment().isBlank()) {
                return Refused.of(Rule.NAME_EMPTY, "equipment");
            }
            return f.reason().isBlank() ? Refused.of(Rule.REASON_EMPTY, f.equipment()) : null;
        }
        if (fact instanceof CareFact.EmergencyCardSet f) {
            return unfinished(f.help());
        }
        throw new AssertionError("unhandled " + fact);
    }

    /** A number without a name helps nobody, nor a name without a number. */
    private static @Nullable Refused unfinished(LocalHelp help) {
        return help.numbers().stream()
                .filter(one -> one.who().isBlank() || one.dial().isBlank())
                .findFirst()
                .map(one -> Refused.of(Rule.LOCAL_NUMBER_INCOMPLETE, one.who().isBlank() ? one.dial() : one.who()))
                .orElse(null);
    }
}
