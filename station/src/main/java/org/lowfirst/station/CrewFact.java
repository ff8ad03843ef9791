package org.lowfirst.station;

/** The people of the bench. */
public sealed interface CrewFact extends AreaFact {

    /** A person as they are from now on; the name says who, and joins the bench's list. */
    record PersonDescribed(PersonDetails person) implements CrewFact {}

    /** Somebody no longer works at the bench and leaves its list; what they entered stands. */
    record PersonLeft(String person, String reason) implements CrewFact {}

    /** Somebody other than its author has read an entry and stands by it. */
    record EntrySigned(long entry, String signer) implements CrewFact {}

    /** A second person stands beside the filler while the fill lasts. */
    record SecondPersonNamed(FillId fill, String filler, String second) implements CrewFact {}
}
