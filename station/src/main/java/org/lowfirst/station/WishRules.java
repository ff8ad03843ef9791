package org.lowfirst.station;

import org.jspecify.annotations.Nullable;

/** What may be begun now. Needs are met already: every id in the command is known. */
final class WishRules {

    private WishRules() {}

    static @Nullable Refused check(Bench bench, Command command, Circumstances circumstances) {
        if (command instanceof Command.StartFill c) {
            Refused alone = CrewRules.beside(bench, circumstances.author(), null, circumstances);
            return alone == null ? start(bench, c) : alone;
        } else if (command instanceof Command.StartFillBeside c) {
            Refused beside = CrewRules.beside(bench, circumstances.author(), c.second(), circumstances);
            return beside == null ? start(bench, c.start()) : beside;
        } else if (command instanceof Command.SignEntry c) {
            return c.signer().equals(c.entry().origin().author())
                    ? Refused.of(Rule.SIGNER_IS_AUTHOR, c.signer())
                    : null;
        } else if (command instanceof Command.AllowWarmStop) {
            return CrewRules.byResponsible(bench, circumstances);
        } else if (command instanceof Command.ConnectSupply c) {
            return supplyName(bench, c.supply(), c.details().name());
        } else if (command instanceof Command.TakeInSupply c) {
            return supplyName(
                    bench, c.connecting().supply(), c.connecting().details().name());
        } else if (command instanceof Command.Enter c && c.fact() instanceof StandFact.ExchangeBegun begun) {
            return exchange(bench, bench.getSupply(begun.leaving()));
        } else if (command instanceof Command.AmendSupply c) {
            return supplyName(bench, c.supply(), c.details().name());
        } else if (command instanceof Command.RegisterBottle c) {
            return bottleName(bench, c.bottle(), c.details().name());
        } else if (command instanceof Command.AmendBottle c) {
            return bottleName(bench, c.bottle(), c.details().name());
        } else if (command instanceof Command.RetireBottle c) {
            Bottle bottle = bench.getBottle(c.bottle());
            return bottle.inUse()
                    ? null
                    : Refused.of(Rule.BOTTLE_RETIRED, bottle.details().name());
        }
        return null;
    }

    private static @Nullable Refused start(Bench bench, Command.StartFill start) {
        Bottle bottle = bench.getBottle(start.bottle());
        String name = bottle.details().name();
        if (!bottle.inUse()) {
            return Refused.of(Rule.BOTTLE_RETIRED, name);
        }
        Refused outside = SessionRules.start(bench, start);
        if (outside != null) {
            return outside;
        }
        boolean inSession = bench.areas().sessions().open() != null;
        OpenFill open = bench.openFill().orElse(null);
        if (open != null && !inSession) {
            return Refused.of(
                    Rule.FILL_ALREADY_OPEN,
                    bench.getBottle(open.bottle()).details().name());
        }
        if (start.target().compareTo(start.before().pressure()) <= 0) {
            return new Refused(
                    Rule.TARGET_NOT_ABOVE_READING,
                    name,
                    start.target(),
                    start.before().pressure());
        }
        return null;
    }

    /** Lines are opened for it, so nothing may be flowing. */
    private static @Nullable Refused exchange(Bench bench, Supply leaving) {
        if (!leaving.connected()) {
            return Refused.of(Rule.SUPPLY_NOT_CONNECTED, leaving.details().name());
        }
        return bench.openFill()
                .map(fill -> Refused.of(
                        Rule.FILL_ALREADY_OPEN,
                        bench.getBottle(fill.bottle()).details().name()))
                .orElse(null);
    }

    private static @Nullable Refused supplyName(Bench bench, SupplyId id, String name) {
        boolean taken = bench.bank().stream()
                .anyMatch(other ->
                        !other.id().equals(id) && sameName(other.details().name(), name));
        return taken ? Refused.of(Rule.NAME_TAKEN, name) : null;
    }

    private static @Nullable Refused bottleName(Bench bench, BottleId id, String name) {
        boolean taken = bench.bottles().values().stream()
                .anyMatch(other -> other.inUse()
                        && !other.id().equals(id)
                        && sameName(other.details().name(), name));
        return taken ? Refused.of(Rule.NAME_TAKEN, name) : null;
    }

    private static boolean sameName(String one, String other) {
        return one.strip().equalsIgnoreCase(other.strip());
    }
}
