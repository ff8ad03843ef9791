package org.lowfirst.web.money;

import java.util.Map;
import java.util.Optional;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.money.Books;
import org.lowfirst.station.FillId;
import org.lowfirst.station.MoneyFact.FillBilled;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.view.NoSuchThing;
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

/** Says who pays for a fill, when it is not the bottle's owner. */
@Controller
public final class PayerPages {

    private final Workplace workplace;
    private final Payers payers;

    public PayerPages(Workplace workplace) {
        this.workplace = workplace;
        this.payers = new Payers(workplace);
    }

    @GetMapping("/at/{bench}/fill/{fill}/payer")
    View ask(@PathVariable String bench, @PathVariable String fill, @RequestParam(defaultValue = "") String back) {
        BenchNow now = workplace.open(bench);
        FillId id = id(fill);
        PayerPart part = payers.findPart(now, id, back);
        if (part == null) {
            throw new NoSuchThing("charge of fill " + fill);
        }
        Books books = workplace.benches().keepingAccounts().books(now.id());
        return workplace.screens().show(new PayerPage(now.place(), Payers.told(books, id, now.words()), part));
    }

    @PostMapping("/at/{bench}/fill/{fill}/payer")
    View bill(@PathVariable String bench, @PathVariable String fill, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        FillId id = id(fill);
        String back = typed.getOrDefault("back", "");
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        String payer = reader.required("payer", "fault.payer");
        reader.required(Sender.WHO, "fault.who");
        Sender sender = Sender.of(typed);
        if (!sender.hasKey()) {
            reader.fault("form", now.words().of("fault.key"));
        }
        if (!reader.form().sound()) {
            return refused(now, id, back, reader.form());
        }
        FillBilled fact = new FillBilled(id, payer, "yes".equals(typed.get("guest")));
        Recording recording = workplace.benches().keepingAccounts().enter(now.id(), fact, sender.submission());
        String fault = workplace.fault(recording);
        return fault.isEmpty()
                ? Redirects.saved(next(now, id, back), Answers.entry(recording).orElse(0L), sender.who())
                : refused(now, id, back, reader.form().faulting("form", fault));
    }

    private static String next(BenchNow now, FillId fill, String back) {
        if (back.equals(Payers.DONE)) {
            return now.place().path("/fill/" + fill + "/done");
        }
        return now.place().path(back.matches("[0-9]{4}-[0-9]{2}") ? "/statements?month=" + back : "/statements");
    }

    private View refused(BenchNow now, FillId fill, String back, Form form) {
        Books books = workplace.benches().keepingAccounts().books(now.id());
        PayerPart part = Optional.ofNullable(payers.find(now, books, fill, back, form))
                .orElseThrow(() -> new NoSuchThing("charge of fill " + fill));
        return workplace.screens().refused(new PayerPage(now.place(), Payers.told(books, fill, now.words()), part));
    }

    private static FillId id(String fill) {
        if (!fill.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,63}")) {
            throw new NoSuchThing("fill " + fill);
        }
        return new FillId(fill);
    }
}
