package org.lowfirst.station;

import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What can be entered about a session. Every cylinder in the fact is known. */
final class SessionRules {

    private SessionRules() {}

    static @Nullable Refused check(Bench bench, SessionFact fact) {
        if (fact instanceof SessionFact.SessionBegun f) {
            return begun(bench, f);
        }
        OpenSession open = bench.areas().sessions().open();
        if (open == null || !open.id().equals(fact.session())) {
            return Refused.of(Rule.SESSION_UNKNOWN, fact.session().value());
        }
        if (fact instanceof SessionFact.SessionPlanned f) {
            return f.stages().stream()
                            .allMatch(stage -> open.findWish(stage.fill()).isPresent())
                    ? null
                    : Refused.of(Rule.BOTTLE_NOT_IN_SESSION, "");
        } else if (fact instanceof SessionFact.StageSkipped f) {
            if (f.reason().isBlank()) {
                return Refused.of(Rule.REASON_EMPTY, "");
            }
            boolean planned = open.remaining(f.fill()).stream()
                    .anyMatch(stage -> stage.supply().equals(f.supply()));
            return planned
                    ? null
                    : Refused.of(
                            Rule.STAGE_NOT_PLANNED,
                            bench.getSupply(f.supply()).details().name());
        } else if (fact instanceof SessionFact.BottleLeftOut f) {
            return leftOut(bench, open, f);
        } else if (fact instanceof SessionFact.SessionEnded) {
            return stillFilling(bench);
        }
        throw new AssertionError("unhandled " + fact);
    }

    private static @Nullable Refused begun(Bench bench, SessionFact.SessionBegun begun) {
        OpenSession open = bench.areas().sessions().open();
        if (open != null) {
            return Refused.of(Rule.SESSION_UNDER_WAY, "");
        }
        Refused filling = stillFilling(bench);
        if (filling != null) {
            return filling;
        }
        Set<BottleId> bottles = new HashSet<>();
        for (SessionWish wish : begun.wishes()) {
            Bottle bottle = bench.getBottle(wish.bottle());
            String name = bottle.details().name();
            StatedPressure floor = wish.floor();
            if (!bottle.inUse()) {
                return Refused.of(Rule.BOTTLE_RETIRED, name);
            } else if (!bottles.add(wish.bottle())) {
                return Refused.of(Rule.BOTTLE_NAMED_TWICE, name);
            } else if (wish.priority() < 1) {
                return Refused.of(Rule.PRIORITY_BELOW_ONE, name);
            } else if (floor != null && floor.compareTo(wish.target()) > 0) {
                return new Refused(Rule.FLOOR_ABOVE_WISH, name, floor, wish.target());
            }
        }
        return null;
    }

    private static @Nullable Refused leftOut(Bench bench, OpenSession open, SessionFact.BottleLeftOut f) {
        SessionWish wish = open.findWish(f.fill()).orElse(null);
        if (wish == null) {
            return Refused.of(Rule.BOTTLE_NOT_IN_SESSION, "");
        }
        if (f.reason().isBlank()) {
            return Refused.of(Rule.REASON_EMPTY, "");
        }
        return bench.openFills().containsKey(f.fill()) || open.finished().contains(f.fill())
                ? Refused.of(
                        Rule.FILL_ALREADY_OPEN,
                        bench.getBottle(wish.bottle()).details().name())
                : null;
    }

    private static @Nullable Refused stillFilling(Bench bench) {
        return bench.openFill()
                .map(fill -> Refused.of(
                        Rule.FILL_ALREADY_OPEN,
                        bench.getBottle(fill.bottle()).details().name()))
                .orElse(null);
    }

    /** A fill outside the session waits until it has ended; inside, several are open and their stages take turns. */
    static @Nullable Refused start(Bench bench, Command.StartFill start) {
        OpenSession open = bench.areas().sessions().open();
        if (open == null) {
            return null;
        }
        SessionWish wish = open.findWish(start.fill()).orElse(null);
        if (wish == null || !wish.bottle().equals(start.bottle())) {
            return Refused.of(Rule.SESSION_UNDER_WAY, "");
        }
        return open.out().containsKey(start.fill())
                ? Refused.of(
                        Rule.BOTTLE_NOT_IN_SESSION,
                        bench.getBottle(start.bottle()).details().name())
                : null;
    }
}
