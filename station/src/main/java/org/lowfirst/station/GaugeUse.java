package org.lowfirst.station;

/** Where a gauge is read unless a reading says otherwise. */
public enum GaugeUse {
    SUPPLIES,
    BOTTLES,
    SPARE
}
