package org.lowfirst.app.bench;

import org.lowfirst.station.SupplyId;

/** A valve of the bench. */
public sealed interface Valve {

    record OfBottle() implements Valve {}

    record Transfer() implements Valve {}

    record OfSupply(SupplyId supply) implements Valve {}
}
