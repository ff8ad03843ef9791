package org.lowfirst.app.file;

/** Follows a long computation and can end it; what was found so far is the answer then. */
@FunctionalInterface
public interface Watch {

    /** Watches nothing and lets it run to its end. */
    Watch PATIENT = (done, share) -> true;

    /**
     * Called many times a second.
     *
     * @param done how far it is, e.g. "run 400 of 1,000"
     * @param share how much is done, from 0 to 1; 0 when that is not known
     * @return false to end it now
     */
    boolean goOn(String done, double share);
}
