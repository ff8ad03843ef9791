package org.lowfirst.planning.session;

import org.lowfirst.gas.Amount;

/** Sees how the search gets on and may stop it; a stopped search gives the best plan so far. */
@FunctionalInterface
public interface SessionWatch {

    SessionWatch PATIENT = soFar -> true;

    /**
     * Called now and then, when a plan for the best choice of bottles is found, and at the end.
     *
     * @return false to stop
     */
    boolean goOn(SoFar soFar);

    /**
     * @param ready bottles ready in the best plan so far
     * @param readyAtMost bottles that no plan can exceed
     * @param gasLeft gas left above the highest stop in the best plan so far
     * @param nodes steps taken
     */
    record SoFar(int ready, int readyAtMost, Amount gasLeft, long nodes) {}
}
