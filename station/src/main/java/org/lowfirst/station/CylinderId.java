package org.lowfirst.station;

/** Identity of a supply or of a bottle: whatever has a gauge of its own. */
public sealed interface CylinderId permits SupplyId, BottleId {

    String value();
}
