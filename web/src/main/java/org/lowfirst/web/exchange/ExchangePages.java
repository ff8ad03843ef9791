package org.lowfirst.web.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.lowfirst.app.bench.BankView;
import org.lowfirst.app.bench.ExchangeOffer;
import org.lowfirst.app.bench.ExchangingASupply;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.station.Supply;
import org.lowfirst.station.SupplyId;
import org.lowfirst.web.exchange.ExchangeChoosePage.OneBank;
import org.lowfirst.web.exchange.ExchangeChoosePage.UnderWay;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.view.NoSuchThing;
import org.lowfirst.web.view.Redirects;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Sender;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;

/** Asks which supply to exchange, asks once more, and begins. */
@Controller
public final class ExchangePages {

    private final Workplace workplace;

    public ExchangePages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/exchange")
    View choose(@PathVariable String bench) {
        BenchNow now = workplace.open(bench);
        ExchangeWriter writer = new ExchangeWriter(now, exchanging());
        BankView view = workplace.benches().keepingTheBank().bank(now.id());
        List<OneBank> banks = new ArrayList<>();
        for (String name : view.supplies().isEmpty() ? List.<String>of() : view.names()) {
            String unnamed = view.names().size() > 1 ? now.words().of("bank.unnamed") : "";
            banks.add(new OneBank(
                    name.isEmpty() ? unnamed : name,
                    exchanging().offers(now.id(), name).stream()
                            .map(writer::offer)
                            .toList()));
        }
        List<UnderWay> underWay = now.bench().stand().leaving().stream()
                .map(id -> new UnderWay(
                        now.bench().getSupply(id).details().name(), now.place().path("/exchange/" + id)))
                .toList();
        return workplace.screens().show(new ExchangeChoosePage(now.place(), banks, underWay));
    }

    @GetMapping("/at/{bench}/exchange/begin")
    View ask(@PathVariable String bench, @RequestParam(defaultValue = "") String supply) {
        BenchNow now = workplace.open(bench);
        return workplace.screens().show(page(now, connected(now, supply), Form.blank()));
    }

    @PostMapping("/at/{bench}/exchange/begin")
    View begin(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Supply supply = connected(now, typed.getOrDefault("supply", ""));
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        reader.required(Sender.WHO, "fault.who");
        Sender sender = Sender.of(typed);
        if (!sender.hasKey()) {
            reader.fault("form", now.words().of("fault.key"));
        }
        if (!reader.form().sound()) {
            return workplace.screens().refused(page(now, supply, reader.form()));
        }
        Recording recording = exchanging().begin(now.id(), supply.id(), sender.submission());
        String fault = workplace.fault(recording);
        if (!fault.isEmpty()) {
            return workplace.screens().refused(page(now, supply, reader.form().faulting("form", fault)));
        }
        String path = now.place().path("/exchange/" + supply.id());
        return Redirects.saved(ExchangePhase.SHUT.at(path, now.now()), 0, sender.who());
    }

    private ExchangeAskPage page(BenchNow now, Supply supply, Form form) {
        ExchangeWriter writer = new ExchangeWriter(now, exchanging());
        List<ExchangeOffer> offers =
                exchanging().offers(now.id(), now.bench().stand().bankName(supply.id()));
        ExchangeOffer offer = offers.stream()
                .filter(one -> one.leaving().supply().id().equals(supply.id()))
                .findFirst()
                .orElseThrow(() -> new NoSuchThing("supply " + supply.id()));
        List<String> means = new ArrayList<>();
        means.add(now.words()
                .of(
                        "exchange.ask.fact",
                        supply.details().name(),
                        offer.leaving().rank(),
                        now.figures().pressureWithUnit(offer.leaving().estimate()),
                        now.gas(offer.leaving().contents())));
        String brings = writer.brings(offer);
        if (!brings.isEmpty()) {
            means.add(brings);
        }
        means.add(now.words().of("exchange.ask.ranks"));
        return new ExchangeAskPage(
                now.place(),
                supply.id().value(),
                supply.details().name(),
                means,
                offer.advised() ? "" : other(now, offers),
                form,
                workplace.ids().next());
    }

    private static String other(BenchNow now, List<ExchangeOffer> offers) {
        return offers.stream()
                .filter(ExchangeOffer::advised)
                .map(lowest -> now.words()
                        .of(
                                "exchange.ask.lowest",
                                lowest.leaving().supply().details().name(),
                                now.figures().pressureWithUnit(lowest.leaving().estimate()),
                                now.gas(lowest.leaving().contents())))
                .findFirst()
                .orElse("");
    }

    private static Supply connected(BenchNow now, String id) {
        return now.bench().bank().stream()
                .filter(supply -> supply.id().value().equals(id))
                .findFirst()
                .orElseThrow(() -> new NoSuchThing("supply " + id));
    }

    /** A supply that leaves or left. */
    static Supply known(BenchNow now, String id) {
        return now.bench().supplies().values().stream()
                .filter(supply -> supply.id().value().equals(id))
                .findFirst()
                .orElseThrow(() -> new NoSuchThing("supply " + id));
    }

    static boolean leaving(BenchNow now, SupplyId id) {
        return now.bench().stand().leaving().contains(id);
    }

    private ExchangingASupply exchanging() {
        return workplace.benches().exchangingASupply();
    }
}
