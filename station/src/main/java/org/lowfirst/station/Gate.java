package org.lowfirst.station;

import org.jspecify.annotations.Nullable;

/**
 * What decides whether a bottle may be filled. Immutable.
 *
 * @param ruleBook text of the rule book adopted; null while the built-in one of the rule set holds
 */
public record Gate(@Nullable String ruleBook) {

    static final Gate NEW = new Gate(null);

    Gate after(GateFact fact) {
        if (fact instanceof GateFact.RuleBookAdopted f) {
            return new Gate(f.text());
        }
        throw new AssertionError("unhandled " + fact);
    }
}
