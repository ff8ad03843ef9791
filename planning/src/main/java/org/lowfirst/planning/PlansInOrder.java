package org.lowfirst.planning;

import java.util.List;

/**
 * Several bottles planned one after another, each on the bank the one before leaves.
 *
 * @param plans one per bottle, in the order given
 * @param bankAfter the bank after the last one
 */
public record PlansInOrder(List<FillPlan> plans, List<RankedSupply> bankAfter) implements InOrderOutcome {

    public PlansInOrder {
        plans = List.copyOf(plans);
        bankAfter = List.copyOf(bankAfter);
    }

    /** Whether every bottle comes to its stop. */
    public boolean reachesAll() {
        return plans.stream().allMatch(FillPlan::reaches);
    }
}
