package org.lowfirst.station.rules;

/** What a refusal means for the cylinder. */
public enum Consequence {
    /** Not now: something has to be found out or done first. */
    HOLD,
    /** The cylinder is not to be filled any more. */
    RETIRE,
    /** It may be used up, and is not filled until tested. */
    USE_UP,
    /** The cylinder passes, the contents wanted do not. */
    LOWER_TARGET
}
