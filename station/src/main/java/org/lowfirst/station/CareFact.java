package org.lowfirst.station;

/** Equipment that is looked after, groups of bottles kept ready, local numbers. */
public sealed interface CareFact extends AreaFact {

    /** A piece of equipment is no longer looked after here. */
    record UpkeepEnded(String equipment, String reason) implements CareFact {}
}
