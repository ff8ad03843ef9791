package org.lowfirst.station;

import org.jspecify.annotations.Nullable;

/**
 * Decides commands. Wishes (start a fill, connect a supply) must be allowed now; what already happened (a stage, a reading)
 * is only refused when it cannot have happened, because the gas has moved whatever the plan said.
 */
public final class Deciding {

    private Deciding() {}

    /**
     * @param bench the bench as it stands, null while it is not open
     * @return the facts to enter, or the first rule that was broken; the bench itself is unchanged
     */
    public static Decision decide(@Nullable Bench bench, Command command, Circumstances circumstances) {
        Refused refused = refusal(bench, command, circumstances);
        return refused == null ? new Accepted(command.facts()) : refused;
    }

    private static @Nullable Refused refusal(@Nullable Bench bench, Command command, Circumstances circumstances) {
        Refused untimely = TimeRules.check(command.fact(), circumstances);
        if (untimely != null) {
            return untimely;
        }
        if (command instanceof Command.OpenBench c) {
            return bench == null
                    ? SettingsRules.check(c.settings(), circumstances)
                    : Refused.of(Rule.BENCH_ALREADY_OPEN, bench.settings().name());
        }
        if (bench == null) {
            return Refused.of(Rule.BENCH_NOT_OPEN, "");
        }
        if (command instanceof Command.CorrectEntry c) {
            return CorrectionRules.check(bench, c, circumstances);
        }
        for (Need need : Need.of(command.fact())) {
            Refused missing = need.missingIn(bench.supplies(), bench.bottles(), bench.openFills());
            if (missing != null) {
                return missing;
            }
        }
        Refused forbidden = WishRules.check(bench, command, circumstances);
        if (forbidden == null) {
            forbidden = FactRules.check(bench, command.fact(), circumstances);
        }
        if (forbidden == null && command.fact() instanceof Fact.FillStarted f) {
            return GateKeeping.start(bench, f, circumstances);
        }
        return forbidden == null && command instanceof Command.TakeInSupply c ? standing(c) : forbidden;
    }

    private static @Nullable Refused standing(Command.TakeInSupply command) {
        for (StandFact fact : command.standing()) {
            Refused refused = StandRules.check(fact);
            if (refused != null) {
                return refused;
            }
        }
        return null;
    }
}
