package org.lowfirst.station.rules;

/** What the pressure is held by. */
public enum WallMaterial {
    STEEL,
    ALUMINIUM,
    /** Aluminium alloy 6351-T6, which is known to crack under load. */
    ALUMINIUM_6351,
    COMPOSITE,
    UNKNOWN;

    public boolean isAluminium() {
        return this == ALUMINIUM || this == ALUMINIUM_6351;
    }
}
