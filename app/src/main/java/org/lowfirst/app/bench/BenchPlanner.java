package org.lowfirst.app.bench;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.lowfirst.planning.BottleToFill;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.FillPlanner;
import org.lowfirst.planning.FillRequest;
import org.lowfirst.planning.PlanOutcome;
import org.lowfirst.planning.RankedSupply;
import org.lowfirst.planning.SupplyState;
import org.lowfirst.planning.TogetherOutcome;
import org.lowfirst.planning.Turn;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.OpenFill;
import org.lowfirst.station.PlannedStage;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Settings;
import org.lowfirst.station.Stage;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.SupplyDetails;
import org.lowfirst.station.SupplyId;

/** Puts a bench into the planner's words and asks it. Thread-safe. */
final class BenchPlanner {

    /** Conditions a bench plans under are few; beyond this many the store of planners starts anew. */
    private static final int MOST_PLANNERS = 64;

    private final GasCount count;
    private final PermittedPressure permitted;
    private final Map<Conditions, FillPlanner> planners = new ConcurrentHashMap<>();

    /** @param zone where the bench stands, which tells what day it is */
    BenchPlanner(GasCount count, ZoneId zone) {
        this.count = count;
        this.permitted = new PermittedPressure(new GateGas(count), zone);
    }

    /**
     * @param bank name of the bank to fill from
     * @param before bottle gauge, settled; all is planned at its temperature
     */
    PlanOutcome plan(BenchState state, String bank, BottleId bottle, StatedPressure target, Reading before) {
        return plan(state, bottle, target, before, bank(state, bank, before));
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
        List<SupplyState> bank = bank(state, state.bench().bankOf(fill.id()), now).stream()
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

    /** Each on the bank the one before leaves; one that is refused leaves it as it is. */
    List<PlanOutcome> inOrder(BenchState state, String bank, List<PlanningAFill.Wanted> bottles) {
        List<PlanOutcome> outcomes = new ArrayList<>();
        List<SupplyState> left = List.of();
        for (PlanningAFill.Wanted next : bottles) {
            List<SupplyState> found = outcomes.isEmpty() ? bank(state, bank, next.before()) : left;
            PlanOutcome outcome = plan(state, next.bottle(), next.target(), next.before(), found);
            left = outcome instanceof FillPlan plan
                    ? plan.fill().bankAfter().stream()
                            .map(RankedSupply::toState)
                            .toList()
                    : found;
            outcomes.add(outcome);
        }
        return List.copyOf(outcomes);
    }

    /** What is still to do with one bottle of a session: its planned stages, every other supply shut. */
    PlanOutcome planStages(BenchState state, OpenFill fill, List<PlannedStage> stages) {
        Reading now = fill.bottleNow();
        Set<String> opened = new HashSet<>();
        StatedPressure target = fill.target();
        for (PlannedStage stage : stages) {
            opened.add(state.bench().getSupply(stage.supply()).details().name());
            target = stage.atStop() && stage.until().compareTo(fill.target()) < 0 ? stage.until() : fill.target();
        }
        List<SupplyState> bank = bank(state, state.bench().bankOf(fill.id()), now).stream()
                .map(supply -> opened.contains(supply.name()) ? supply : supply.holdBack())
                .toList();
        return plan(state, fill.bottle(), target, now, bank);
    }

    /** From one supply alone, however it stands. */
    PlanOutcome planFrom(BenchState state, SupplyId supply, BottleId bottle, StatedPressure target, Reading before) {
        String name = state.bench().getSupply(supply).details().name();
        List<SupplyState> only = supplies(BankNow.of(state, before.temperature().temperature(), count)).stream()
                .filter(known -> known.name().equals(name))
                .map(known -> known.in(Turn.BY_RANK))
                .toList();
        return plan(state, bottle, target, before, only);
    }

    /**
     * What it would cost to open supplies together, and what they give kept apart.
     *
     * @param bank the supplies at the bench's usual temperature
     * @param open names of those opened together
     */
    TogetherOutcome together(
            BenchState state, UsualBottle usual, List<SupplyState> bank, Set<String> open, Instant now) {
        Settings settings = state.bench().settings();
        Reading before = usual.before(settings, now);
        return planner(conditions(settings, before))
                .openTogether(request(state, usual.bottle().id(), usual.target(), before, bank), open);
    }

    PlanOutcome plan(BenchState state, BottleId bottle, StatedPressure target, Reading before, List<SupplyState> bank) {
        return planner(conditions(state.bench().settings(), before)).plan(request(state, bottle, target, before, bank));
    }

    private FillRequest request(
            BenchState state, BottleId bottle, StatedPressure target, Reading before, List<SupplyState> bank) {
        return new FillRequest(
                bank,
                toFill(state.bench(), bottle, target, before),
                state.bench().settings().fullSupply().gauge());
    }

    BottleToFill toFill(Bench bench, BottleId bottle, StatedPressure target, Reading before) {
        BottleDetails details = bench.getBottle(bottle).details();
        return new BottleToFill(
                details.name(),
                details.waterVolume().stated().volume(),
                before.pressure().gauge(),
                target.gauge(),
                permitted.atReference(bench, bottle, before.at()));
    }

    /** How much bottles may hold. */
    PermittedPressure permitted() {
        return permitted;
    }

    List<SupplyState> bank(BenchState state, String bank, Reading before) {
        return supplies(BankNow.of(state, bank, before.temperature().temperature(), count));
    }

    /** A bank in the planner's words. */
    static List<SupplyState> supplies(BankNow bank) {
        return bank.supplies().stream().map(BenchPlanner::supplyState).toList();
    }

    private static SupplyState supplyState(BankNow.Shown shown) {
        SupplyDetails details = shown.supply().details();
        return new SupplyState(
                details.name(),
                details.waterVolume().stated().volume(),
                shown.reading(),
                turn(shown.standing().turn()));
    }

    static Turn turn(org.lowfirst.station.Turn turn) {
        return switch (turn) {
            case BY_RANK -> Turn.BY_RANK;
            case FIRST -> Turn.FIRST;
            case HELD_BACK, TAGGED_OUT -> Turn.HELD_BACK;
        };
    }

    Conditions conditions(Settings settings, Reading before) {
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
