package org.lowfirst.app.virtual;

/** What a person does otherwise than the guide says, once, in the first stage of a fill. */
public enum Slip {
    NONE,
    /** Shuts the transfer valve after half a minute. */
    SHUTS_EARLY,
    /** Is called away for 45 minutes while gas flows. */
    IS_CALLED_AWAY
}
