package org.lowfirst.planning.exchange;

/**
 * How many bottles come.
 *
 * @param fillsPerDay mean over the coming weeks
 * @param spread how far the mean itself may be off: standard deviation as a share of it, 0 when it is known
 */
public record Rate(double fillsPerDay, double spread) {}
