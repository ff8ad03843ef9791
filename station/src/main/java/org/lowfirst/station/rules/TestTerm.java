package org.lowfirst.station.rules;

/** Which rule says how often this cylinder is tested. */
sealed interface TestTerm {

    /** Every so many years. */
    record Every(RuleHeading rule, int years) implements TestTerm {}

    /** It needs no periodic test. */
    record Never(RuleHeading rule) implements TestTerm {}

    /** Its permit says, and the terms were not entered. */
    record PermitNotEntered(RuleHeading rule) implements TestTerm {}

    /** No rule of the book speaks of it. */
    record Unknown() implements TestTerm {}
}
