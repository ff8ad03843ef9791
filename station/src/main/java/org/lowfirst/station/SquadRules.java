package org.lowfirst.station;

import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** What can be entered about groups of bottles and shifts. Every bottle in the fact is known. */
final class SquadRules {

    private SquadRules() {}

    static @Nullable Refused check(Bench bench, CareFact fact, Circumstances circumstances) {
        if (fact instanceof CareFact.GroupDescribed f) {
            return described(f.group());
        } else if (fact instanceof CareFact.GroupEnded f) {
            return known(bench, f.group());
        } else if (fact instanceof CareFact.BottleAssigned f) {
            return assigned(bench, f, circumstances);
        } else if (fact instanceof CareFact.BottlesSwapped f) {
            return swapped(bench, f);
        } else if (fact instanceof CareFact.ShiftStarted f) {
            Instant latest = circumstances.now().plus(TimeRules.CLOCK_TOLERANCE);
            return f.at().isAfter(latest)
                    ? new Refused(Rule.TIME_IN_FUTURE, "", new StatedTime(f.at()), new StatedTime(circumstances.now()))
                    : null;
        }
        throw new AssertionError("unhandled " + fact);
    }

    private static @Nullable Refused described(GroupDetails group) {
        if (group.name().isBlank()) {
            return Refused.of(Rule.NAME_EMPTY, "group");
        }
        if (group.priority() < 1) {
            return Refused.of(Rule.PRIORITY_BELOW_ONE, Integer.toString(group.priority()));
        }
        if (group.floor().value().signum() < 0) {
            StatedPressure zero =
                    new StatedPressure(BigDecimal.ZERO, group.floor().unit());
            return new Refused(Rule.FLOOR_BELOW_ZERO, group.name(), group.floor(), zero);
        }
        return group.floor().compareTo(group.wish()) > 0
                ? new Refused(Rule.FLOOR_ABOVE_WISH, group.name(), group.floor(), group.wish())
                : null;
    }

    private static @Nullable Refused known(Bench bench, String group) {
        return bench.areas().care().squad().groups().containsKey(group) ? null : Refused.of(Rule.GROUP_UNKNOWN, group);
    }

    private static @Nullable Refused assigned(
            Bench bench, CareFact.BottleAssigned assigned, Circumstances circumstances) {
        BottleDetails bottle = bench.getBottle(assigned.bottle()).details();
        if (!bench.getBottle(assigned.bottle()).inUse()) {
            return Refused.of(Rule.BOTTLE_RETIRED, bottle.name());
        }
        String name = assigned.group();
        if (name == null) {
            return null;
        }
        GroupDetails group = bench.areas().care().squad().groups().get(name);
        if (group == null) {
            return Refused.of(Rule.GROUP_UNKNOWN, name);
        }
        return group.wish().compareTo(bottle.servicePressure()) > 0 && !circumstances.confirmed()
                ? new Refused(Rule.WISH_ABOVE_SERVICE_PRESSURE, bottle.name(), group.wish(), bottle.servicePressure())
                : null;
    }

    private static @Nullable Refused swapped(Bench bench, CareFact.BottlesSwapped swap) {
        Squad squad = bench.areas().care().squad();
        Assignment out = squad.assigned().get(swap.out());
        Assignment in = squad.assigned().get(swap.in());
        boolean together = out != null
                && in != null
                && out.group().equals(in.group())
                && !swap.out().equals(swap.in());
        return together
                ? null
                : Refused.of(
                        Rule.NOT_IN_ONE_GROUP,
                        bench.getBottle(swap.out()).details().name());
    }
}
