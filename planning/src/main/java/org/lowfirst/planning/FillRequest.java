package org.lowfirst.planning;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;

/**
 * One bottle, one bank.
 *
 * @param supplies the bank in any order
 * @param bottle the bottle to fill
 * @param fullSupply what a supply reads at the bench's temperature when it comes from the supplier, to advise an exchange;
 *     null when unknown, then the advice names the least reading that would do
 */
public record FillRequest(
        List<SupplyState> supplies,
        BottleToFill bottle,
        @Nullable GaugePressure fullSupply) {

    public FillRequest {
        supplies = List.copyOf(supplies);
    }

    public FillRequest(List<SupplyState> supplies, BottleToFill bottle) {
        this(supplies, bottle, null);
    }
}
