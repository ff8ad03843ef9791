package org.lowfirst.transfer.warm;

import org.lowfirst.transfer.Hose;

/**
 * One source opened to one bottle, with heat.
 *
 * @param source what the gas comes from
 * @param hose on the source's side of the valve; its gas mixes with the source's at the start
 * @param bottle the bottle as it is
 * @param opening how the valve is worked
 * @param stop where the valve is shut
 * @param surroundings the air around both
 * @param sampling how long and how finely
 */
public record WarmStage(
        WarmSource source,
        Hose hose,
        WarmState bottle,
        Opening opening,
        Stop stop,
        Surroundings surroundings,
        Sampling sampling) {

    /** The hose left out of account. */
    public WarmStage(
            WarmSource source,
            WarmState bottle,
            Opening opening,
            Stop stop,
            Surroundings surroundings,
            Sampling sampling) {
        this(source, Hose.NONE, bottle, opening, stop, surroundings, sampling);
    }
}
