package org.lowfirst.station.rules;

/** What came of changing a book. */
public sealed interface BookChange {

    record Changed(RuleBook book) implements BookChange {}

    record NotChanged(Problem problem, String ruleId) implements BookChange {}

    /** Why a book was left as it was. */
    enum Problem {
        NO_SUCH_RULE,
        /** It is the last of a kind every book must have; change it instead. */
        REQUIRED_RULE
    }
}
