package org.lowfirst.station;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What must be there, or not be there, before a fact can have happened. Without it the journal makes no sense; whether the
 * fact is wise is for {@link Deciding}.
 */
sealed interface Need {

    @Nullable
    Refused missingIn(Map<SupplyId, Supply> supplies, Map<BottleId, Bottle> bottles, Map<FillId, OpenFill> openFills);

    /** The cylinder is known. */
    record Known(CylinderId cylinder) implements Need {
        @Override
        public @Nullable Refused missingIn(
                Map<SupplyId, Supply> supplies, Map<BottleId, Bottle> bottles, Map<FillId, OpenFill> openFills) {
            if (cylinder instanceof SupplyId id) {
                return supplies.containsKey(id) ? null : Refused.of(Rule.SUPPLY_UNKNOWN, id.value());
            }
            return bottles.containsKey(cylinder) ? null : Refused.of(Rule.BOTTLE_UNKNOWN, cylinder.value());
        }
    }

    /** The supply is in the bank. */
    record Connected(SupplyId supply) implements Need {
        @Override
        public @Nullable Refused missingIn(
                Map<SupplyId, Supply> supplies, Map<BottleId, Bottle> bottles, Map<FillId, OpenFill> openFills) {
            Supply known = supplies.get(supply);
            if (known == null) {
                return Refused.of(Rule.SUPPLY_UNKNOWN, supply.value());
            }
            return known.connected()
                    ? null
                    : Refused.of(Rule.SUPPLY_NOT_CONNECTED, known.details().name());
        }
    }

    /** The id was never used for a cylinder. */
    record Unused(CylinderId cylinder) implements Need {
        @Override
        public @Nullable Refused missingIn(
                Map<SupplyId, Supply> supplies, Map<BottleId, Bottle> bottles, Map<FillId, OpenFill> openFills) {
            boolean used = cylinder instanceof SupplyId id ? supplies.containsKey(id) : bottles.containsKey(cylinder);
            return used ? Refused.of(Rule.ID_TAKEN, cylinder.value()) : null;
        }
    }

    /** The fill has begun and not ended, or, when {@code open} is false, has not begun. */
    record FillOpen(FillId fill, boolean open) implements Need {
        @Override
        public @Nullable Refused missingIn(
                Map<SupplyId, Supply> supplies, Map<BottleId, Bottle> bottles, Map<FillId, OpenFill> openFills) {
            if (openFills.containsKey(fill) == open) {
                return null;
            }
            return Refused.of(open ? Rule.FILL_UNKNOWN : Rule.ID_TAKEN, fill.value());
        }
    }

    static List<Need> of(Fact fact) {
        if (fact instanceof Fact.SupplyConnected f) {
            return List.of(new Unused(f.supply()));
        } else if (fact instanceof Fact.SupplyAmended f) {
            return List.of(new Known(f.supply()));
        } else if (fact instanceof Fact.SupplyRemoved f) {
            return List.of(new Connected(f.supply()));
        } else if (fact instanceof Fact.BottleRegistered f) {
            return List.of(new Unused(f.bottle()));
        } else if (fact instanceof Fact.BottleAmended f) {
            return List.of(new Known(f.bottle()));
        } else if (fact instanceof Fact.BottleRetired f) {
            return List.of(new Known(f.bottle()));
        } else if (fact instanceof Fact.ReadingTaken f) {
            return List.of(new Known(f.cylinder()));
        } else if (fact instanceof Fact.WarmBottleRead f) {
            return List.of(new Known(f.bottle()));
        } else if (fact instanceof Fact.TwoOpenedTogether f) {
            return List.of(new Known(f.first()), new Known(f.second()));
        } else if (fact instanceof Fact.BenchOpened
                || fact instanceof Fact.SettingsChanged
                || fact instanceof Fact.GaugeDescribed
                || fact instanceof Fact.GaugeRetired
                || fact instanceof Fact.WarmStopAllowed
                || fact instanceof Fact.WarmStopForbidden
                || fact instanceof Fact.EntryCorrected) {
            return List.of();
        } else if (fact instanceof AreaFact f) {
            return f.cylinders().stream().<Need>map(Known::new).toList();
        }
        return ofFill(fact);
    }

    private static List<Need> ofFill(Fact fact) {
        if (fact instanceof Fact.FillStarted f) {
            return List.of(new FillOpen(f.fill(), false), new Known(f.bottle()));
        } else if (fact instanceof Fact.StageRecorded f) {
            return List.of(new FillOpen(f.fill(), true), new Known(f.stage().supply()));
        } else if (fact instanceof Fact.FillFinished f) {
            return List.of(new FillOpen(f.fill(), true));
        } else if (fact instanceof Fact.FillAbandoned f) {
            return List.of(new FillOpen(f.fill(), true));
        } else if (fact instanceof Fact.FillRecorded f) {
            List<Need> needs = new ArrayList<>();
            needs.add(new Known(f.bottle()));
            f.stages().forEach(stage -> needs.add(new Known(stage.supply())));
            return needs;
        }
        throw new AssertionError("unhandled " + fact);
    }
}
