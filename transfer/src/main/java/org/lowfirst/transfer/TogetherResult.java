package org.lowfirst.transfer;

import java.util.List;
import org.lowfirst.gas.Amount;

/**
 * State after several supplies were open to one bottle at the same time.
 *
 * @param supplies the supplies in the order given, all at one pressure
 * @param hose the hose, at the supplies' pressure
 * @param bottle the bottle
 * @param moved what the bottle gained
 * @param ending how it ended; with {@link Ending#NOTHING_MOVED} the supplies have levelled all the same
 */
public record TogetherResult(List<Vessel> supplies, Hose hose, Vessel bottle, Amount moved, Ending ending) {

    public TogetherResult {
        supplies = List.copyOf(supplies);
    }
}
