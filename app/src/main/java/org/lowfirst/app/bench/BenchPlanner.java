package org.lowfirst.app.bench;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.lowfirst.planning.BottleToFill;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.FillPlanner;
import org.lowfirst.planning.FillRequest;
import org.lowfirst.planning.PlanOutcome;
import org.lowfirst.planning.SupplyState;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.OpenFill;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Settings;
import org.lowfirst.station.Stage;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.Supply;
import org.lowfirst.station.SupplyId;

/** Puts a bench into the planner's words and asks it. Thread-safe. */
final class BenchPlanner {

    /** Conditions a bench plans under are few; beyond this many the store of planners starts anew. */
    private static final int MOST_PLANNERS = 64;

    private final GasCount count;
    private final Map<Conditions, FillPlanner> planners = new ConcurrentHashMap<>();

    BenchPlanner(GasCount count) {
        this.count = count;
    }

    /** @param before bottle gauge, settled; all is planned at its temperature */
    PlanOutcome plan(BenchState state, BottleId bottle, StatedPressure target, Reading before) {
        return plan(state, bottle, target, before, bank(state, before));
    }

    /**
     * The rest of a fill. A supply is left shut when what it could still give is no more than a gauge can tell: the bottle was
     * typed as its gauge shows it, so the supply just used would otherwise come again for a hair's breadth. One that was tried
     * and gave nothing is left shut too, whatever its gauge shows: two gauges that disagree would otherwise have it opened again
     * and again.
     */
    PlanOutcome planRest(BenchState state, OpenFill fill) {
        Reading now = fill.bottleNow();
        double tellable_Pa = state.bench()
                .settings()
                .rules()
                .figures()
                .repeatability()
                .gauge()
                .pascals();
        double bottle_Pa = now.pressure().gauge().pascals();
        double target_Pa = fill.target().gauge().pascals();
        Map<String, Integer> gaveNothing = gaveNothing(state, fill, tellable_Pa);
        boolean there = target_Pa - bottle_Pa < tellable_Pa;
        List<SupplyState> bank = bank(state, now).stream()
                .map(supply -> there
                                || spent(supply, gaveNothing.getOrDefault(supply.name(), 0), target_Pa)
                                || supply.reading().pascals() - bottle_Pa <= tellable_Pa
                        ? supply.holdBack()
                        : supply)
                .toList();
        return plan(state, fill.bottle(), fill.target(), now, bank);
    }

    /** By name of the supply: how many of its latest stages in a row lifted the bottle by no more than a gauge can tell. */
    private static Map<String, Integer> gaveNothing(BenchState state, OpenFill fill, double tellable_Pa) {
        Map<String, Integer> times = new HashMap<>();
        double before_Pa = fill.before().pressure().gauge().pascals();
        for (Stage stage : fill.stages()) {
            double after_Pa = stage.bottleAfter().pressure().gauge().pascals();
            boolean gave = after_Pa - before_Pa > tellable_Pa;
            state.bench()
                    .findSupply(stage.supply())
                    .map(supply -> supply.details().name())
                    .ifPresent(name -> times.put(name, gave ? 0 : times.getOrDefault(name, 0) + 1));
            before_Pa = after_Pa;
        }
        return times;
    }

    /** A supply that reads above the target is tried once more: a bottle topped up to it while warm gains little, too. */
    private static boolean spent(SupplyState supply, int gaveNothing, double target_Pa) {
        return gaveNothing >= (supply.reading().pascals() > target_Pa ? 2 : 1);
    }

    /** From one supply alone. */
    PlanOutcome planFrom(BenchState state, SupplyId supply, BottleId bottle, StatedPressure target, Reading before) {
        String name = state.bench().getSupply(supply).details().name();
        List<SupplyState> only = bank(state, before).stream()
                .filter(known -> known.name().equals(name))
                .toList();
        return plan(state, bottle, target, before, only);
    }

    private PlanOutcome plan(
            BenchState state, BottleId bottle, StatedPressure target, Reading before, List<SupplyState> bank) {
        Settings settings = state.bench().settings();
        BottleDetails details = state.bench().getBottle(bottle).details();
        BottleToFill toFill = new BottleToFill(
                details.name(),
                details.waterVolume().stated().volume(),
                before.pressure().gauge(),
                target.gauge(),
                details.servicePressure().gauge());
        return planner(conditions(settings, before))
                .plan(new FillRequest(bank, toFill, settings.fullSupply().gauge()));
    }

    private List<SupplyState> bank(BenchState state, Reading before) {
        return BankNow.of(state, before.temperature().temperature(), count).supplies().stream()
                .map(shown -> supplyState(shown.supply(), shown))
                .toList();
    }

    private static SupplyState supplyState(Supply supply, BankNow.Shown shown) {
        return new SupplyState(
                supply.details().name(), supply.details().waterVolume().stated().volume(), shown.reading());
    }

    private Conditions conditions(Settings settings, Reading before) {
        return new Conditions(
                count.gas(),
                before.temperature().temperature(),
                settings.rules().figures().referenceTemperature().temperature(),
                settings.surroundings().ambient().absolute(),
                settings.surroundings().hoseVolume().volume());
    }

    private FillPlanner planner(Conditions conditions) {
        if (planners.size() >= MOST_PLANNERS) {
            planners.clear();
        }
        return planners.computeIfAbsent(conditions, FillPlanner::under);
    }
}
