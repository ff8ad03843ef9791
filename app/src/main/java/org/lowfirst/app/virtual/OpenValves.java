package org.lowfirst.app.virtual;

/**
 * The valves that are not shut.
 *
 * @param supply name of the supply that is open; empty when none is
 */
public record OpenValves(boolean bottle, boolean transfer, String supply) {

    /** Whether gas can pass from a supply to the bottle. */
    public boolean flowing() {
        return bottle && transfer && !supply.isEmpty();
    }
}
