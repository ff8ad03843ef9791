package org.lowfirst.station;

/** Whether a bottle is still used. */
public enum BottleStatus {
    IN_USE,
    RETIRED
}
