package org.lowfirst.station;

/** The people of the bench. */
public sealed interface CrewFact extends AreaFact {

    /** Somebody no longer works at the bench; what they entered stands. */
    record PersonLeft(String person, String reason) implements CrewFact {}
}
