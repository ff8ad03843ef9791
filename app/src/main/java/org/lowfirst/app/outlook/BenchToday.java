package org.lowfirst.app.outlook;

import java.util.List;
import org.lowfirst.app.honest.BenchSource.Banked;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.SupplyState;
import org.lowfirst.station.Bench;
import org.lowfirst.station.RuleSet;
import org.lowfirst.station.Units;

/**
 * A bench as the planner sees it today.
 *
 * @param bench its state
 * @param conditions gas, temperatures and hose
 * @param banked the connected supplies, lowest first, with what their gauges should show
 */
public record BenchToday(Bench bench, Conditions conditions, List<Banked> banked) {

    public BenchToday {
        banked = List.copyOf(banked);
    }

    public List<SupplyState> bank() {
        return banked.stream()
                .map(banked -> new SupplyState(
                        banked.supply().details().name(),
                        banked.supply().details().waterVolume().stated().volume(),
                        banked.reading(),
                        banked.turn()))
                .toList();
    }

    public ShownUnits units() {
        Units units = bench.settings().units();
        return new ShownUnits(units.pressure(), units.temperature(), units.volume());
    }

    /** The condition at which an amount of gas is stated as a volume. */
    public ReferenceCondition standard() {
        return bench.settings().rules() == RuleSet.US
                ? ReferenceCondition.US_70F_1ATM
                : ReferenceCondition.ISO_15C_1ATM;
    }
}
