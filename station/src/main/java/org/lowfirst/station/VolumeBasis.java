package org.lowfirst.station;

/** How a water volume came to be known, best first. */
public enum VolumeBasis {
    /** Weighed full of water, or calculated from such a weighing. */
    MEASURED,
    /** Read from the stamp on the cylinder. */
    STAMPED,
    /** Worked out from a nameplate such as "244 cu ft at 2,200 psi". */
    NAMEPLATE,
    /** Taken from the catalogue of generic sizes; the stamp wins over it. */
    CATALOGUE
}
