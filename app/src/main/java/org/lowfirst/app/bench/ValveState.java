package org.lowfirst.app.bench;

/**
 * How a valve stands once the step is done.
 *
 * @param name the valve as people call it, e.g. "Supply A"
 * @param act true when this step moves this valve
 */
public record ValveState(Valve valve, String name, Setting setting, boolean act) {

    /** The same valve with nothing to do. */
    ValveState atRest() {
        return new ValveState(valve, name, setting, false);
    }

    /** How a valve stands. */
    public enum Setting {
        SHUT,
        CRACKED,
        OPEN
    }
}
