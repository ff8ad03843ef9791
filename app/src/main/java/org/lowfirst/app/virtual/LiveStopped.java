package org.lowfirst.app.virtual;

/** Somebody stopped the play between two steps. */
final class LiveStopped extends RuntimeException {

    private static final long serialVersionUID = 1L;
}
