package org.lowfirst.planning;

import java.util.List;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;

/**
 * The stages of one bottle, lowest supply first.
 *
 * @param reaches whether the bottle comes to its stop
 * @param finalReading what the bottle reads at the end, settled
 * @param steps the stages in order
 * @param skipped the supplies that stay shut, in rank order
 * @param bankAfter every supply afterwards, in its new rank
 * @param delivered what the bottle gains
 * @param vented what goes to the surroundings with the hose
 */
public record Fill(
        boolean reaches,
        GaugePressure finalReading,
        List<Step> steps,
        List<Skipped> skipped,
        List<RankedSupply> bankAfter,
        Amount delivered,
        Amount vented) {

    public Fill {
        steps = List.copyOf(steps);
        skipped = List.copyOf(skipped);
        bankAfter = List.copyOf(bankAfter);
    }
}
