package org.lowfirst.web.ahead;

import java.util.ArrayList;
import java.util.List;
import org.lowfirst.planning.Chance;
import org.lowfirst.planning.exchange.ExchangeAdvice;
import org.lowfirst.planning.exchange.ExchangeOption;
import org.lowfirst.planning.exchange.OrderAt;
import org.lowfirst.web.ahead.SendBackPage.OptionLine;
import org.lowfirst.web.ahead.SendBackPage.OrderLine;
import org.lowfirst.web.ahead.SendBackPage.SendBackSheet;
import org.lowfirst.web.picture.BarsPicture;
import org.lowfirst.web.words.Words;
import org.lowfirst.web.workplace.BenchNow;

/** Writes exchange advice for people. */
final class SendBackWriter {

    private static final int MOST = 8;

    private final BenchNow now;
    private final Words words;

    SendBackWriter(BenchNow now) {
        this.now = now;
        this.words = now.words();
    }

    SendBackSheet sheet(ExchangeAdvice advice) {
        List<ExchangeOption> options =
                advice.options().subList(0, Math.min(MOST, advice.options().size()));
        return new SendBackSheet(
                advice.inWords(now.shownUnits()),
                advice.waits(),
                options.stream().map(this::option).toList(),
                words.of("send-back.options.how", advice.countedIn()),
                picture(options).draw(),
                orders(advice));
    }

    private OptionLine option(ExchangeOption option) {
        return new OptionLine(
                name(option),
                now.gas(option.returned()),
                money(option.worthReturned()),
                money(option.costNow()),
                option.fillsLeft().inWords(now.shownUnits()),
                money(option.aboveBest()));
    }

    private String name(ExchangeOption option) {
        List<String> names = option.supplies();
        if (names.isEmpty()) {
            return words.of("send-back.wait");
        }
        return names.size() == 1 ? names.get(0) : words.of("send-back.pair", names.get(0), names.get(1));
    }

    private BarsPicture picture(List<ExchangeOption> options) {
        List<BarsPicture.Bar> bars = new ArrayList<>();
        for (ExchangeOption option : options) {
            bars.add(new BarsPicture.Bar(
                    name(option),
                    option.aboveBest(),
                    option.aboveBest(),
                    option.aboveBest(),
                    money(option.aboveBest()),
                    -1,
                    bars.isEmpty()));
        }
        return new BarsPicture(
                bars,
                new BarsPicture.Wording(
                        words.of("send-back.picture", name(options.get(0))), words.of("send-back.picture.title")));
    }

    private List<OrderLine> orders(ExchangeAdvice advice) {
        int from = Math.max(0, advice.orderAt() - MOST / 2);
        int to = Math.min(advice.orders().size(), from + MOST);
        return advice.orders().subList(from, to).stream()
                .map(at -> order(at, advice.orderAt()))
                .toList();
    }

    private OrderLine order(OrderAt at, int best) {
        return new OrderLine(
                Integer.toString(at.fillsLeft()),
                words.of("send-back.percent", Chance.percent(at.chanceMissed(), words.locale())),
                money(at.cost()),
                at.fillsLeft() == best);
    }

    private String money(double value) {
        return now.figures().number(value + 0.0, 2);
    }
}
