package org.lowfirst.planning.exchange;

import java.util.List;
import org.lowfirst.gas.Amount;
import org.lowfirst.planning.FillsLeft;

/**
 * Something that can be done now.
 *
 * @param supplies names of those sent back together; empty for waiting
 * @param returned gas that goes back unused
 * @param worthReturned what was paid for it
 * @param costNow price of the new supplies and their delivery
 * @param fillsLeft fills of the most usual bottle in the bank afterwards
 * @param aboveBest how much more the coming year costs than with the best option, supplies and deliveries counted, missed fills
 *     not: every later exchange is made at once, of the lowest, when a bottle cannot be finished
 */
public record ExchangeOption(
        List<String> supplies,
        Amount returned,
        double worthReturned,
        double costNow,
        FillsLeft fillsLeft,
        double aboveBest) {

    public ExchangeOption {
        supplies = List.copyOf(supplies);
    }

    public boolean waits() {
        return supplies.isEmpty();
    }
}
