package org.lowfirst.app.money;

import org.lowfirst.station.StatedCost;
import org.lowfirst.station.charges.SupplierCost;

/**
 * A cost as it counts.
 *
 * @param stated as entered
 * @param cost as an amount
 * @param entry number of its entry
 */
public record Paid(StatedCost stated, SupplierCost cost, long entry) {}
