package org.lowfirst.station;

/** The people of the bench. */
public sealed interface CrewFact extends AreaFact {

    /** A person as they are from now on; the name says who, and joins the bench's list. */
    record PersonDescribed(PersonDetails person) implements CrewFact {}

    /** Somebody no longer works at the bench and leaves its list; what they entered stands. */
    record PersonLeft(String person, String reason) implements CrewFact {}
}
