package org.lowfirst.station.readiness;

import org.lowfirst.gas.GaugePressure;

/**
 * Bottles that are kept ready alike.
 *
 * @param name as people call it
 * @param priority 1 is served first
 * @param floor below it a bottle is not left in service
 * @param wish what a bottle should hold, at least the floor
 */
public record Group(String name, int priority, GaugePressure floor, GaugePressure wish) {

    public Group {
        if (floor.compareTo(wish) > 0) {
            throw new IllegalArgumentException("The floor of " + name + " (" + floor.pascals()
                    + " Pa) must not be above its wish (" + wish.pascals() + " Pa).");
        }
        if (floor.pascals() < 0.0) {
            throw new IllegalArgumentException(
                    "The floor of " + name + " (" + floor.pascals() + " Pa) must not be below zero.");
        }
        if (priority < 1) {
            throw new IllegalArgumentException("The priority of " + name + " (" + priority + ") must be 1 or more.");
        }
    }
}
