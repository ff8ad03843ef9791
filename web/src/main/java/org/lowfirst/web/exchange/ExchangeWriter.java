package org.lowfirst.web.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.BankView;
import org.lowfirst.app.bench.ExchangeOffer;
import org.lowfirst.app.bench.ExchangingASupply;
import org.lowfirst.app.bench.ReturnedGas;
import org.lowfirst.app.bench.SupplyView;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.FillsLeft;
import org.lowfirst.station.Supply;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.charges.Money;
import org.lowfirst.web.exchange.ExchangeDonePage.Moved;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.words.Words;
import org.lowfirst.web.workplace.BenchNow;

/** Says in words what an exchange means and what came of it. */
final class ExchangeWriter {

    private final BenchNow now;
    private final ExchangingASupply exchanging;
    private final Words words;
    private final Figures figures;

    ExchangeWriter(BenchNow now, ExchangingASupply exchanging) {
        this.now = now;
        this.exchanging = exchanging;
        this.words = now.words();
        this.figures = now.figures();
    }

    ExchangeChoosePage.Offer offer(ExchangeOffer offer) {
        SupplyView view = offer.leaving();
        return new ExchangeChoosePage.Offer(
                now.place().path("/exchange/begin?supply=" + view.supply().id()),
                view.rank(),
                view.supply().details().name(),
                figures.pressureWithUnit(view.estimate()),
                offer.advised(),
                words.of("exchange.returns", now.gas(view.contents())),
                brings(offer));
    }

    String brings(ExchangeOffer offer) {
        @Nullable FillsLeft before = offer.now();
        @Nullable FillsLeft full = offer.withFull();
        return before == null || full == null
                ? ""
                : words.of("exchange.brings", full.inWords(now.shownUnits()), before.inWords(now.shownUnits()));
    }

    /** What goes back by the latest reading, and what was paid for it where a price is known. */
    String returned(Supply supply) {
        ReturnedGas returned = exchanging.returned(now.id(), supply);
        String reads = figures.pressureWithUnit(supply.latest().pressure().gauge());
        String gas = now.gas(returned.gas());
        @Nullable Money paid = returned.paid();
        return paid == null
                ? words.of("exchange.goes-back", supply.details().name(), reads, gas, now.gasCondition())
                : words.of(
                        "exchange.goes-back.paid",
                        supply.details().name(),
                        reads,
                        gas,
                        now.gasCondition(),
                        Figures.number(paid.amount(), words.locale()) + " "
                                + paid.currency().getCurrencyCode());
    }

    ExchangeDonePage done(Supply left, Supply newcomer, BankView view) {
        List<SupplyView> after = view.in(now.bench().stand().bankName(newcomer.id()));
        List<SupplyId> before = ranksBefore(left, newcomer, after);
        List<Moved> moved = new ArrayList<>();
        moved.add(new Moved(left.details().name(), Integer.toString(before.indexOf(left.id()) + 1), ""));
        for (SupplyView supply : after) {
            SupplyId id = supply.supply().id();
            moved.add(new Moved(
                    supply.supply().details().name(),
                    before.contains(id) ? Integer.toString(before.indexOf(id) + 1) : "",
                    Integer.toString(supply.rank())));
        }
        String ranks = IntStream.rangeClosed(1, after.size())
                .mapToObj(Integer::toString)
                .collect(Collectors.joining(", "));
        String order = after.stream()
                .map(supply -> supply.supply().details().name() + " " + figures.pressureWithUnit(supply.estimate()))
                .collect(Collectors.joining(", "));
        return new ExchangeDonePage(
                now.place(),
                left.details().name(),
                newcomer.details().name(),
                newcomer.id().value(),
                returned(left),
                words.of("exchange.done.order", order),
                words.of("exchange.done.labels", ranks),
                moved);
    }

    private static List<SupplyId> ranksBefore(Supply left, Supply newcomer, List<SupplyView> after) {
        record At(SupplyId id, GaugePressure reading) {}
        List<At> before = new ArrayList<>();
        before.add(new At(left.id(), left.latest().pressure().gauge()));
        after.stream()
                .filter(supply -> !supply.supply().id().equals(newcomer.id()))
                .forEach(supply -> before.add(new At(supply.supply().id(), supply.estimate())));
        before.sort(Comparator.comparing(At::reading));
        return before.stream().map(At::id).toList();
    }
}
