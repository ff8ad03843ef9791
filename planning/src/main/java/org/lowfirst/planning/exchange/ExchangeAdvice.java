package org.lowfirst.planning.exchange;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.words.Phrases;

/**
 * What to send back, and when to order.
 *
 * @param options what can be done now, cheapest year first; waiting is one of them, and the last one where the order is due
 * @param waits whether waiting with the order is cheaper than ordering today
 * @param later what is then sent back when the order is due: the lowest, or the two lowest where that makes the cheaper year
 * @param fillsLeft fills of the usual bottles in the bank now, on the mean
 * @param orderAt cheapest number of fills left to order at
 * @param orders ordering at each number of fills left, from 0 up to more than can come before a delivery
 * @param fillsPerDay the rate it rests on
 * @param countedIn name of the most usual bottle, in fills of which the options are told
 */
public record ExchangeAdvice(
        List<ExchangeOption> options,
        boolean waits,
        List<String> later,
        int fillsLeft,
        int orderAt,
        List<OrderAt> orders,
        double fillsPerDay,
        String countedIn)
        implements ExchangeOutcome {

    public ExchangeAdvice {
        options = List.copyOf(options);
        later = List.copyOf(later);
        orders = List.copyOf(orders);
    }

    /** The best option other than waiting. */
    public ExchangeOption bestExchange() {
        return options.stream().filter(option -> !option.waits()).findFirst().orElseThrow();
    }

    /** Days until the order is due, on the mean. */
    public double daysUntilOrder() {
        return waits ? Math.max(0, fillsLeft - orderAt) / fillsPerDay : 0.0;
    }

    /** One or two sentences for people. */
    public String inWords(ShownUnits units) {
        Phrases phrases = Phrases.in(units.language());
        ExchangeOption best = bestExchange();
        return phrases.text(
                waits ? "exchange.wait" : "exchange.now",
                Map.of(
                        "left", fills(phrases, fillsLeft),
                        "at", fills(phrases, orderAt),
                        "days", String.format(Locale.ROOT, "%.0f", daysUntilOrder()),
                        "which", names(phrases, best.supplies()),
                        "later", names(phrases, later),
                        "above", units.number(best.aboveBest(), 2),
                        "worth", units.number(best.worthReturned(), 2),
                        "fills", best.fillsLeft().inWords(units)));
    }

    private static String names(Phrases phrases, List<String> names) {
        return names.size() == 1
                ? names.get(0)
                : phrases.text("two-names", Map.of("first", names.get(0), "second", names.get(1)));
    }

    private static String fills(Phrases phrases, int number) {
        return phrases.text(
                number == 1 ? "fills-are-left.one" : "fills-are-left.many", Map.of("count", Integer.toString(number)));
    }
}
