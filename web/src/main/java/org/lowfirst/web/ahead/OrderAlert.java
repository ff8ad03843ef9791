package org.lowfirst.web.ahead;

import org.lowfirst.app.outlook.AskingAhead.Look;
import org.lowfirst.planning.ahead.OrderAdvice;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;

/** Whether somebody must be told to order, by what the bench keeps. */
public final class OrderAlert {

    private OrderAlert() {}

    /** One sentence; empty when there is time, when an order is on its way, and when nothing can be said. */
    public static String of(BenchNow now, Workplace workplace) {
        if (now.bench().areas().outlook().findOrdered(now.today()).isPresent()) {
            return "";
        }
        Look look = workplace.benches().askingAhead().look(now.id(), now.times().zone(), now.today());
        if (!(look instanceof Look.Seen seen)) {
            return "";
        }
        OrderAdvice order = seen.looked().forecast().order();
        return ForecastPages.pressing(order.alert()) ? order.inWords(now.words().locale()) : "";
    }
}
