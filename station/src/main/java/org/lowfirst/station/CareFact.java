package org.lowfirst.station;

/** Equipment that is looked after, groups of bottles kept ready, local numbers. */
public sealed interface CareFact extends AreaFact {

    /** A piece of equipment is no longer looked after here. */
    record UpkeepEnded(String equipment, String reason) implements CareFact {}

    /** All the emergency card says of the place, as it is from now on. */
    record EmergencyCardSet(LocalHelp help) implements CareFact {}
}
