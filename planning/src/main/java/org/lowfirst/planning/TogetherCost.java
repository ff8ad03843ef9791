package org.lowfirst.planning;

import java.util.List;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;

/**
 * What it costs to have the valves of several supplies open at the same time before a fill, against opening them one at a time.
 *
 * @param level what the supplies read after they have levelled among themselves
 * @param bankTogether the bank then, before the bottle is connected
 * @param fillsApart such fills from the bank with the supplies kept apart
 * @param fillsTogether such fills from the bank after they have levelled
 * @param usableApart gas in the supplies above the bottle's stop, kept apart: only this can finish a bottle
 * @param usableTogether gas above the stop after they have levelled
 */
public record TogetherCost(
        GaugePressure level,
        List<RankedSupply> bankTogether,
        FillsLeft fillsApart,
        FillsLeft fillsTogether,
        Amount usableApart,
        Amount usableTogether)
        implements TogetherOutcome {

    public TogetherCost {
        bankTogether = List.copyOf(bankTogether);
    }

    public int wastedFills() {
        return fillsApart.complete() - fillsTogether.complete();
    }
}
