package org.lowfirst.app.exchange;

import java.util.List;
import org.lowfirst.app.plan.FileBank;
import org.lowfirst.planning.exchange.ExchangeAdvice;

/**
 * Exchange advice with what it was made from.
 *
 * @param bank the bank, its conditions and units
 * @param advice what to send back, and when to order
 */
public record ExchangeDone(FileBank bank, ExchangeAdvice advice) {

    /** Whether the order is due now. */
    public boolean orderIsDue() {
        return !advice.waits();
    }

    /** What a reader of the numbers has to know, in sentences. */
    List<String> notes() {
        return List.of(
                advice.inWords(bank.units()),
                "Costs are those of the coming year over the cheapest option: supplies, deliveries and missed fills, every"
                        + " later exchange made of the lowest supply when a bottle cannot be finished.",
                "Litres are litres of gas at " + bank.standard().label() + ". What goes back is not refunded.");
    }
}
