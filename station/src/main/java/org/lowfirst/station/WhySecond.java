package org.lowfirst.station;

/** Why somebody fills only with a second person beside. The words for people are in the message file, by this code. */
public enum WhySecond {
    /** Fills under supervision. */
    SUPERVISED,
    /** Has other roles, but not that of a filler. */
    NOT_A_FILLER,
    TRAINING_PAST,
    CHECK_OUT_PAST
}
