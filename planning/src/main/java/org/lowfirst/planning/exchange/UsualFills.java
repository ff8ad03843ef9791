package org.lowfirst.planning.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.BottleToFill;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.FillPlanner;
import org.lowfirst.planning.FillRequest;
import org.lowfirst.planning.FillsLeft;
import org.lowfirst.planning.PlanOutcome;
import org.lowfirst.planning.SupplyState;
import org.lowfirst.planning.study.BottleUse;

/** Fills left of the most usual bottle, brought with the middle of its readings. */
final class UsualFills {

    private UsualFills() {}

    /** With full supplies, used by their rank, in these places of the bank. */
    static FillsLeft left(ExchangeRequest request, List<SupplyState> found, List<Integer> exchanged) {
        List<SupplyState> bank = new ArrayList<>(found);
        for (int place : exchanged) {
            SupplyState old = found.get(place);
            bank.set(
                    place,
                    new SupplyState(
                            old.name(), old.waterVolume(), request.terms().fullSupply()));
        }
        BottleUse use = usual(request);
        GaugePressure middle = new GaugePressure(
                0.5 * (use.startLowest().pascals() + use.startHighest().pascals()));
        PlanOutcome outcome = FillPlanner.under(request.conditions())
                .plan(new FillRequest(
                        bank,
                        new BottleToFill(use.name(), use.waterVolume(), middle, use.target(), use.servicePressure())));
        if (outcome instanceof FillPlan plan) {
            return plan.fillsLeft();
        }
        throw new IllegalArgumentException("The request must have been checked: " + outcome);
    }

    /** The bottle with the largest share. */
    static BottleUse usual(ExchangeRequest request) {
        return request.usual().stream()
                .max(Comparator.comparingDouble(BottleUse::share))
                .orElseThrow();
    }
}
