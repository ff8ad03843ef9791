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
                "A year over is what supplies and deliveries of the coming year cost above the cheapest option, every"
                        + " later exchange made at once, of the lowest supply, when a bottle cannot be finished; the"
                        + " first after waiting of the two lowest where that is cheaper. Missed fills are weighed in the"
                        + " second table only, which says when to order; so waiting may be the cheaper year while the"
                        + " order is due.",
                "Fills left of the first table are those of " + advice.countedIn()
                        + ", brought with the middle of its readings; those of the second are of all bottles as they"
                        + " come.",
                "Litres are litres of gas at " + bank.standard().label() + ". What goes back is not refunded.");
    }
}
