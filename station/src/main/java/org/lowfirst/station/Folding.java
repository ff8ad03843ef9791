package org.lowfirst.station;

/** What came of folding a journal. */
public sealed interface Folding {

    record Folded(Bench bench) implements Folding {}

    /** There was no entry. */
    record Nothing() implements Folding {}

    /**
     * An entry does not fit what went before it; nothing after it was looked at.
     *
     * @param entry the first entry that does not fit
     * @param why the rule it breaks
     */
    record Broken(Entry entry, Refused why) implements Folding {}
}
