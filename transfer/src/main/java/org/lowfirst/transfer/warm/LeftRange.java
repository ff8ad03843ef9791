package org.lowfirst.transfer.warm;

/** Thrown inside a simulation when a state leaves the range of the gas equation; caught where the simulation is started. */
final class LeftRange extends RuntimeException {

    private static final long serialVersionUID = 1L;

    LeftRange(String where) {
        super(where);
    }
}
