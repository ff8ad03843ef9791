package org.lowfirst.planning.exchange;

import java.util.List;
import java.util.Locale;
import org.lowfirst.planning.ShownUnits;

/**
 * What to send back, and when to order.
 *
 * @param options what can be done now, cheapest year first; waiting is one of them
 * @param fillsLeft fills of the usual bottles in the bank now, on the mean
 * @param orderAt cheapest number of fills left to order at
 * @param orders ordering at each number of fills left, from 0 up to more than can come before a delivery
 * @param fillsPerDay the rate it rests on
 */
public record ExchangeAdvice(
        List<ExchangeOption> options, int fillsLeft, int orderAt, List<OrderAt> orders, double fillsPerDay)
        implements ExchangeOutcome {

    public ExchangeAdvice {
        options = List.copyOf(options);
        orders = List.copyOf(orders);
    }

    /** Whether waiting with the order is cheaper than ordering today. */
    public boolean waits() {
        return orderAt < fillsLeft;
    }

    /** The best option other than waiting. */
    public ExchangeOption bestExchange() {
        return options.stream().filter(option -> !option.waits()).findFirst().orElseThrow();
    }

    /** Days until the order is due, on the mean. */
    public double daysUntilOrder() {
        return Math.max(0, fillsLeft - orderAt) / fillsPerDay;
    }

    /** One or two sentences for people. */
    public String inWords(ShownUnits units) {
        ExchangeOption best = bestExchange();
        String which = String.join(" and ", best.supplies());
        if (waits()) {
            return String.format(
                    Locale.ROOT,
                    "Wait: %s left. Order when %s left, in about %.0f days. Sending %s back now costs %.2f more over the"
                            + " coming year.",
                    fills(fillsLeft),
                    fills(orderAt),
                    daysUntilOrder(),
                    which,
                    best.aboveBest());
        }
        return String.format(
                Locale.ROOT,
                "Order now and send back %s: it returns gas worth %.2f and leaves %s.",
                which,
                best.worthReturned(),
                best.fillsLeft().inWords(units));
    }

    private static String fills(int number) {
        return number == 1 ? "1 fill is" : number + " fills are";
    }
}
