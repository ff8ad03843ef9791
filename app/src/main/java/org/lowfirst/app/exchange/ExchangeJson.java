package org.lowfirst.app.exchange;

import org.lowfirst.app.sheet.JsonLine;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.exchange.ExchangeAdvice;
import org.lowfirst.planning.exchange.ExchangeOption;
import org.lowfirst.planning.exchange.OrderAt;

/** Exchange advice as one JSON object on one line, see docs/schema/exchange-result.schema.json. */
public final class ExchangeJson {

    private final ExchangeDone done;
    private final JsonLine json = new JsonLine();

    private ExchangeJson(ExchangeDone done) {
        this.done = done;
    }

    /** The object, with a new line at its end. */
    public static String of(ExchangeDone done) {
        return new ExchangeJson(done).text();
    }

    private String text() {
        ExchangeAdvice advice = done.advice();
        json.openObject();
        json.key("waits").value(advice.waits());
        json.key("send_back_later").openList();
        advice.later().forEach(json::value);
        json.closeList();
        json.key("fills_left").value(advice.fillsLeft());
        json.key("order_at").value(advice.orderAt());
        json.key("days_until_order").value(advice.daysUntilOrder());
        json.key("fills_per_day").value(advice.fillsPerDay());
        json.key("options").openList();
        advice.options().forEach(this::option);
        json.closeList();
        json.key("orders").openList();
        advice.orders().forEach(this::order);
        json.closeList();
        json.key("notes").openList();
        done.notes().forEach(json::value);
        json.closeList();
        return json.closeObject() + "\n";
    }

    private void option(ExchangeOption option) {
        json.openObject();
        json.key("supplies").openList();
        option.supplies().forEach(json::value);
        json.closeList();
        json.key("returned_litres").value(done.bank().standardLitres(option.returned()));
        json.key("worth_returned").value(option.worthReturned());
        json.key("cost_now").value(option.costNow());
        json.key("fills_left").openObject();
        json.key("complete").value(option.fillsLeft().complete());
        GaugePressure next = option.fillsLeft().nextStopsAt();
        json.key("next_stops_at");
        if (next == null) {
            json.nothing();
        } else {
            json.openObject();
            json.key("psi").value(next.toPsi());
            json.key("bar").value(next.toBar());
            json.closeObject();
        }
        json.closeObject();
        json.key("above_best").value(option.aboveBest());
        json.closeObject();
    }

    private void order(OrderAt at) {
        json.openObject();
        json.key("fills_left").value(at.fillsLeft());
        json.key("chance_missed").value(at.chanceMissed());
        json.key("gas_cost").value(at.gasCost());
        json.key("missed_cost").value(at.missedCost());
        json.closeObject();
    }
}
