package org.lowfirst.station.stamp;

/** How cylinders of a region are marked. */
public enum Convention {
    /** United States and Canada: specification and pressure, serial, maker, month, tester, year. */
    US,
    /** Europe: standard, test pressure, mass, water volume, year and month. */
    EUROPEAN
}
