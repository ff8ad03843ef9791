package org.lowfirst.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;

/**
 * Plans fills at one bench under today's conditions. Immutable and thread-safe; making one evaluates the equation of state, so
 * keep it for as long as the conditions hold.
 */
public final class FillPlanner {

    private final BenchGas bench;

    private FillPlanner(BenchGas bench) {
        this.bench = bench;
    }

    /** A planner for these conditions; conditions that cannot be computed refuse every plan. */
    public static FillPlanner under(Conditions conditions) {
        return new FillPlanner(BenchGas.under(conditions));
    }

    /** Why these conditions refuse every plan; null when they can be planned with. */
    public @Nullable PlanRefused refused() {
        return bench.refused();
    }

    /**
     * Where the valve is shut for a bottle of this marking.
     *
     * @param target settled reading wanted at the bench's temperature
     * @param servicePressure marked pressure at the reference temperature
     * @throws IllegalArgumentException when the conditions refuse every plan
     */
    public StopReading stop(GaugePressure target, GaugePressure servicePressure) {
        PlanRefused refused = bench.refused();
        if (refused != null) {
            throw new IllegalArgumentException("The conditions must not be refused: " + refused);
        }
        return bench.ready().stop(target, servicePressure);
    }

    /** Plans one bottle. */
    public PlanOutcome plan(FillRequest request) {
        InOrderOutcome outcome = planInOrder(request.supplies(), List.of(request.bottle()), request.fullSupply());
        return outcome instanceof PlansInOrder plans ? plans.plans().get(0) : (PlanRefused) outcome;
    }

    /**
     * Plans several bottles one after another in the order given, each on the bank the one before leaves.
     *
     * @param fullSupply see {@link FillRequest#fullSupply()}
     */
    public InOrderOutcome planInOrder(
            List<SupplyState> supplies, List<BottleToFill> bottles, @Nullable GaugePressure fullSupply) {
        PlanRefused wrong = bench.wrongWith(supplies, bottles, fullSupply);
        if (wrong != null) {
            return wrong;
        }
        Bench ready = bench.ready();
        BankState bank = BankState.of(supplies, ready.now());
        List<FillPlan> plans = new ArrayList<>(bottles.size());
        for (BottleToFill bottle : bottles) {
            List<SupplyState> found = plans.isEmpty()
                    ? supplies
                    : bank.supplies().stream().map(RankedSupply::toState).toList();
            FillPlan plan = new OneFill(ready, bank, new FillRequest(found, bottle, fullSupply)).plan();
            plans.add(plan);
            bank = BankState.ranked(plan.fill().bankAfter());
        }
        return new PlansInOrder(plans, bank.supplies());
    }

    /**
     * What it would cost to have several supply valves open at the same time before this fill.
     *
     * @param open names of the supplies opened together, at least one
     */
    public TogetherOutcome openTogether(FillRequest request, Set<String> open) {
        PlanRefused wrong = bench.wrongWith(request.supplies(), List.of(request.bottle()), request.fullSupply());
        if (wrong != null) {
            return wrong;
        }
        Set<String> unknown = new TreeSet<>(open);
        request.supplies().forEach(supply -> unknown.remove(supply.name()));
        if (open.isEmpty() || !unknown.isEmpty()) {
            return new PlanRefused.SupplyUnknown(
                    unknown.isEmpty() ? "" : unknown.iterator().next());
        }
        return OpenTogether.cost(bench.ready(), request, open);
    }
}
