package org.lowfirst.transfer.warm;

/** How the valve is worked during a stage. */
public sealed interface Opening {

    /** The widest the valve is opened. */
    FlowArea widest();

    /** Set once and left. */
    record Fixed(FlowArea widest) implements Opening {}

    /**
     * Worked so that the bottle's gauge rises at a steady rate, as long as the valve at its widest lets enough through; then left
     * at its widest.
     */
    record SteadyRise(RiseRate rate, FlowArea widest) implements Opening {}
}
