package org.lowfirst.web.money;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.station.Currencies;
import org.lowfirst.station.MoneyFact;
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

/** Enters what was agreed about rent and what bills say of it, and holds the one against the other. */
@Controller
public final class RentPages {

    private final Workplace workplace;

    public RentPages(Workplace workplace) {
        this.workplace = workplace;
    }

    /** The smallest amount that is paid in a currency; a cent when there is no such currency. */
    static BigDecimal smallest(String currency) {
        return BigDecimal.ONE.movePointLeft(Currencies.find(currency)
                .map(money -> money.getDefaultFractionDigits())
                .orElse(2));
    }

    @GetMapping("/at/{bench}/rent")
    View show(@PathVariable String bench) {
        BenchNow now = workplace.open(bench);
        return workplace.screens().show(page(now, freshTerms(), freshBill()));
    }

    @PostMapping("/at/{bench}/rent")
    View agree(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        MoneyFact.@Nullable RentAgreed fact = new RentFields(reader, now).terms();
        String fault = fact == null ? "" : enter(now, fact, reader, typed);
        return fact != null && fault.isEmpty() && reader.form().sound()
                ? saved(now, typed)
                : workplace.screens().refused(page(now, reader.form(), freshBill()));
    }

    @PostMapping("/at/{bench}/rent/bill")
    View bill(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        MoneyFact.@Nullable RentBilled fact = new RentFields(reader, now).bill();
        String fault = fact == null ? "" : enter(now, fact, reader, typed);
        return fact != null && fault.isEmpty() && reader.form().sound()
                ? saved(now, typed)
                : workplace.screens().refused(page(now, freshTerms(), reader.form()));
    }

    /** @return why it was not entered, which also stands in the form then; empty when it was */
    private String enter(BenchNow now, MoneyFact fact, Reader reader, Map<String, String> typed) {
        Sender sender = Sender.of(typed);
        if (!sender.hasKey()) {
            reader.fault("form", now.words().of("fault.key"));
            return "";
        }
        Recording recording = workplace.benches().keepingAccounts().enter(now.id(), fact, sender.submission());
        String fault = workplace.fault(recording);
        if (!fault.isEmpty()) {
            reader.fault(RentFields.field(fact, Answers.rule(recording)), fault);
        }
        return fault;
    }

    private static View saved(BenchNow now, Map<String, String> typed) {
        return Redirects.saved(now.place().path("/rent"), 0L, Sender.of(typed).who());
    }

    private Form freshTerms() {
        return Form.with(Map.of("since", today().toString(), "count", "both"));
    }

    private Form freshBill() {
        return Form.with(Map.of("day", today().toString()));
    }

    private RentPage page(BenchNow now, Form terms, Form bill) {
        return new RentWriter(now, workplace.benches().keepingAccounts().books(now.id()), today())
                .page(terms, bill, workplace.ids().next());
    }

    private LocalDate today() {
        return StatementsPages.today(workplace);
    }
}
