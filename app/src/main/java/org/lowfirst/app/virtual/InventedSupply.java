package org.lowfirst.app.virtual;

import org.lowfirst.station.SupplyDetails;

/** A supply as it is marked and as it is. */
public record InventedSupply(SupplyDetails details, CylinderTruth truth) {}
