package org.lowfirst.transfer.warm;

/** How far a figure of a datasheet can be relied on. */
public enum Status {
    /** The source itself was read. */
    READ,
    /** A quotation of the source was read. */
    READ_SECOND_HAND,
    /** Recalled, not read again. */
    REMEMBERED,
    /** Follows from other figures by arithmetic. */
    COMPUTED,
    /** No source: a choice of ours, to be replaced by a measured value where there is one. */
    ASSUMED
}
