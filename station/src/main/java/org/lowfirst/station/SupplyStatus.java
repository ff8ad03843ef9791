package org.lowfirst.station;

/** Where a supply is. */
public enum SupplyStatus {
    CONNECTED,
    REMOVED
}
