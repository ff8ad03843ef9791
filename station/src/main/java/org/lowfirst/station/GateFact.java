package org.lowfirst.station;

/** What decides whether a bottle may be filled: rules, markings, answers, refusals set aside. */
public sealed interface GateFact extends AreaFact {

    /**
     * The rule book as it is from now on.
     *
     * @param text the whole book, in the form of {@link org.lowfirst.station.rules.RuleBookText}
     */
    record RuleBookAdopted(String text) implements GateFact {}
}
