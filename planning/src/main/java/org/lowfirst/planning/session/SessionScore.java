package org.lowfirst.planning.session;

import org.lowfirst.gas.Amount;

/**
 * What a plan comes to.
 *
 * @param ready bottles ready, at wish or floor
 * @param full bottles at their wish
 * @param gasLeft gas left in the supplies above the highest stop of the session
 * @param changes hose changes and supplies opened
 * @param time_s when the last valve is shut [s]
 */
public record SessionScore(int ready, int full, Amount gasLeft, int changes, double time_s) {}
