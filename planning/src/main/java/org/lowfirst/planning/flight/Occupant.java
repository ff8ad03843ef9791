package org.lowfirst.planning.flight;

/**
 * A person on board.
 *
 * @param name as typed, unique in a flight
 * @param flow what the person's device takes while in use
 * @param from altitude from which the device is in use, upwards
 */
public record Occupant(String name, Role role, Flow flow, Altitude from) {

    /** Whom a rule speaks of. */
    public enum Role {
        CREW,
        PASSENGER
    }
}
