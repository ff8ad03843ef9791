package org.lowfirst.planning.ahead;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.SupplyState;

/**
 * A bank and what is known about the use of it.
 *
 * @param conditions at the bench; all fills ahead are counted at its temperature
 * @param bank the supplies; those held back are left out
 * @param history fills of the past
 * @param usual bottles of the bench as they usually come, to start with; may be empty when there is a history
 * @param events planned ones
 * @param guess null for none
 * @param ordering how supplies are ordered
 * @param today first day ahead
 * @param seed where chance starts
 */
public record AheadRequest(
        Conditions conditions,
        List<SupplyState> bank,
        UseHistory history,
        List<UsualFill> usual,
        List<PlannedEvent> events,
        @Nullable UseGuess guess,
        Ordering ordering,
        LocalDate today,
        long seed) {

    public AheadRequest {
        bank = List.copyOf(bank);
        usual = List.copyOf(usual);
        events = List.copyOf(events);
    }
}
