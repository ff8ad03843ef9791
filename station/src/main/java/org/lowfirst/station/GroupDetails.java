package org.lowfirst.station;

/**
 * Bottles that are kept ready alike.
 *
 * @param priority 1 is served first
 * @param floor settled gauge reading below which a bottle is not left in service
 * @param wish settled gauge reading a bottle should have
 */
public record GroupDetails(String name, int priority, StatedPressure floor, StatedPressure wish) {}
