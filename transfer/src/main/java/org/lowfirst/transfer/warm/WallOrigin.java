package org.lowfirst.transfer.warm;

/** Where what is known of a wall comes from. */
public enum WallOrigin {
    /** Weighed, measured or on the nameplate. */
    STATED,
    /** From a size catalogue. */
    CATALOGUE,
    /** Derived from service pressure and water volume: an assumption, to be shown as one. */
    ASSUMED
}
