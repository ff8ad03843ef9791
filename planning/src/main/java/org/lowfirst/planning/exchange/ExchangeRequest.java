package org.lowfirst.planning.exchange;

import java.util.List;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.SupplyState;
import org.lowfirst.planning.study.BottleUse;

/**
 * A bank and the question what to send back.
 *
 * @param conditions at the bench
 * @param bank the supplies; those held back stay where they are
 * @param usual the bottles that come, with their shares
 * @param terms what an exchange costs
 * @param rate how many bottles come
 * @param seed where chance starts
 */
public record ExchangeRequest(
        Conditions conditions, List<SupplyState> bank, List<BottleUse> usual, Terms terms, Rate rate, long seed) {

    public ExchangeRequest {
        bank = List.copyOf(bank);
        usual = List.copyOf(usual);
    }
}
