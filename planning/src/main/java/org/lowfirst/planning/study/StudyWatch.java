package org.lowfirst.planning.study;

/** Follows a study while it runs, and can end it. Called by one thread at a time, not always the same one. */
@FunctionalInterface
public interface StudyWatch {

    /** Watches nothing and lets every study run to its end. */
    StudyWatch NONE = (runsDone, runs) -> true;

    /**
     * Called many times a second; the caller works out the time left from its own clock.
     *
     * @param runsDone runs done so far
     * @param runs runs asked for
     * @return false to end the study now with what is done
     */
    boolean goOn(long runsDone, long runs);
}
