package org.lowfirst.station;

/**
 * Permission to stop a warm fill above the marked service pressure so that it settles to it.
 *
 * @param responsible who gave it: the responsible person of the bench
 * @param followed the published rule or table that is followed
 */
public record WarmStop(String responsible, String followed) {}
