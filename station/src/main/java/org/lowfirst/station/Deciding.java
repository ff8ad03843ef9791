package org.lowfirst.station;

import org.jspecify.annotations.Nullable;

/** Decides commands: the rules of the bench in one place. */
public final class Deciding {

    private Deciding() {}

    /**
     * @param bench the bench as it stands, null while it is not open
     * @return the facts to enter, or the rule that was broken; the bench itself is unchanged
     */
    public static Decision decide(@Nullable Bench bench, Command command, Circumstances circumstances) {
        return Refused.of(Rule.BENCH_NOT_OPEN, "bench");
    }
}
