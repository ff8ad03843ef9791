package org.lowfirst.web.money;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.station.Accounts;
import org.lowfirst.station.MoneyFact.TariffSet;
import org.lowfirst.station.StatedTariff;
import org.lowfirst.station.charges.Charge;
import org.lowfirst.station.charges.GasUnit;
import org.lowfirst.station.charges.Tariff;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.view.Redirects;
import org.lowfirst.web.workplace.Answers;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Sender;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;

/** Sets what a fill costs, with an example worked out before anything is saved. */
@Controller
public final class PricesPages {

    private final Workplace workplace;

    public PricesPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/prices")
    View show(@PathVariable String bench) {
        BenchNow now = workplace.open(bench);
        Form form = Form.with(PricesFields.filled(now, today()));
        Optional<StatedTariff> force =
                now.bench().areas().accounts().findTariff(today()).map(TariffSet::tariff);
        return workplace.screens().show(page(now, form, force.orElse(null)));
    }

    @PostMapping("/at/{bench}/prices")
    View set(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        @Nullable LocalDate from = PricesFields.from(reader, now);
        @Nullable StatedTariff tariff = PricesFields.read(reader, now);
        if (typed.containsKey("try")) {
            PricesPage page = page(now, reader.form(), tariff);
            return reader.form().sound()
                    ? workplace.screens().show(page)
                    : workplace.screens().refused(page);
        }
        reader.required(Sender.WHO, "fault.who");
        Sender sender = Sender.of(typed);
        if (!sender.hasKey()) {
            reader.fault("form", now.words().of("fault.key"));
        }
        if (from == null || tariff == null || !reader.form().sound()) {
            return workplace.screens().refused(page(now, reader.form(), tariff));
        }
        Recording recording =
                workplace.benches().keepingAccounts().enter(now.id(), new TariffSet(from, tariff), sender.submission());
        String fault = workplace.fault(recording);
        if (fault.isEmpty()) {
            return Redirects.saved(
                    now.place().path("/prices"), Answers.entry(recording).orElse(0L), sender.who());
        }
        Form form = reader.form().faulting(PricesFields.field(Answers.rule(recording)), fault);
        return workplace.screens().refused(page(now, form, tariff));
    }

    private LocalDate today() {
        return LocalDate.ofInstant(
                workplace.clock().instant(), workplace.clock().getZone());
    }

    private PricesPage page(BenchNow now, Form form, @Nullable StatedTariff tariff) {
        MoneyWriter writer = new MoneyWriter(now.words());
        return new PricesPage(
                now.place(),
                tariff == null
                        ? List.of()
                        : tariff.findTariff()
                                .map(sound -> example(sound, now, writer))
                                .orElse(List.of()),
                tariffs(now, writer),
                form,
                workplace.ids().next());
    }

    /** A usual fill, a small one, and the usual one of a guest. */
    private static List<PricesPage.Example> example(Tariff tariff, BenchNow now, MoneyWriter writer) {
        boolean feet = tariff.unit() == GasUnit.STANDARD_CUBIC_FOOT;
        BigDecimal usual = new BigDecimal(feet ? "18" : "500");
        BigDecimal small = new BigDecimal(feet ? "2" : "60");
        return List.of(
                line("prices.example.usual", usual, false, tariff, now, writer),
                line("prices.example.small", small, false, tariff, now, writer),
                line("prices.example.guest", usual, true, tariff, now, writer));
    }

    private static PricesPage.Example line(
            String key, BigDecimal quantity, boolean guest, Tariff tariff, BenchNow now, MoneyWriter writer) {
        Charge charge = tariff.charge(quantity, guest);
        return new PricesPage.Example(
                now.words().of(key, writer.gas(quantity, tariff)),
                writer.money(charge.amount()),
                writer.working(charge, tariff));
    }

    private List<PricesPage.Line> tariffs(BenchNow now, MoneyWriter writer) {
        Accounts accounts = now.bench().areas().accounts();
        Optional<TariffSet> force = accounts.findTariff(today());
        List<PricesPage.Line> lines = new ArrayList<>();
        for (TariffSet set : accounts.tariffs()) {
            String standing = set.from().isAfter(today())
                    ? "prices.to-come"
                    : force.filter(set::equals).isPresent() ? "prices.in-force" : "prices.past";
            set.tariff()
                    .findTariff()
                    .ifPresent(tariff -> lines.add(new PricesPage.Line(
                            writer.day(set.from()), now.words().of(standing), writer.prices(tariff))));
        }
        Collections.reverse(lines);
        return lines;
    }
}
