package org.lowfirst.web.money;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.money.Books;
import org.lowfirst.app.money.Uncharged;
import org.lowfirst.station.MoneyFact.MonthClosed;
import org.lowfirst.station.Rule;
import org.lowfirst.station.charges.ChargeLine;
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

/** Closes a month, once what will stand has been read again. */
@Controller
public final class ClosePages {

    private final Workplace workplace;

    public ClosePages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/statements/close")
    View ask(@PathVariable String bench, @RequestParam String month) {
        BenchNow now = workplace.open(bench);
        return workplace.screens().show(page(now, StatementsPages.month(month), Form.blank()));
    }

    @PostMapping("/at/{bench}/statements/close")
    View close(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        YearMonth month = StatementsPages.month(typed.getOrDefault("month", ""));
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        reader.required(Sender.WHO, "fault.who");
        Sender sender = Sender.of(typed);
        if (!sender.hasKey()) {
            reader.fault("form", now.words().of("fault.key"));
        }
        if (!reader.form().sound()) {
            return workplace.screens().refused(page(now, month, reader.form()));
        }
        Recording recording = workplace
                .benches()
                .keepingAccounts()
                .enter(now.id(), new MonthClosed(month, sender.who()), sender.submission());
        String fault = workplace.fault(recording);
        if (fault.isEmpty()) {
            return Redirects.saved(
                    now.place().path("/statements?month=" + month),
                    Answers.entry(recording).orElse(0L),
                    sender.who());
        }
        boolean person =
                Answers.rule(recording).filter(Rule.NOT_TREASURER::equals).isPresent();
        return workplace
                .screens()
                .refused(page(now, month, reader.form().faulting(person ? Sender.WHO : "form", fault)));
    }

    private ClosePage page(BenchNow now, YearMonth month, Form form) {
        Books books = workplace.benches().keepingAccounts().books(now.id());
        MoneyWriter writer = new MoneyWriter(now.words());
        List<ChargeLine> lines = books.book().lines().stream()
                .filter(line -> line.month().equals(month))
                .toList();
        long people =
                lines.stream().map(line -> line.fill().person()).distinct().count();
        List<String> facts = List.of(
                now.words().count("close.lines", lines.size()),
                now.words().count("close.people", people),
                now.words().of("close.total", writer.money(books.book().total(month))),
                now.words().of("close.costs", writer.money(books.result(month).costs())));
        return new ClosePage(
                now.place(),
                month.toString(),
                writer.month(month),
                facts,
                now.words().of("close.after", writer.month(month), writer.month(month.plusMonths(1))),
                warnings(now, books, month, writer),
                form,
                workplace.ids().next());
    }

    private List<String> warnings(BenchNow now, Books books, YearMonth month, MoneyWriter writer) {
        List<String> warnings = new ArrayList<>();
        books.findOpenBefore(month)
                .ifPresent(open -> warnings.add(now.words().of("close.earlier", writer.month(open))));
        if (!StatementsPages.today(workplace).isAfter(month.atEndOfMonth())) {
            warnings.add(now.words().of("close.not-over", writer.month(month)));
        }
        if (books.book().isClosed(month)) {
            warnings.add(now.words().of("close.closed", writer.month(month)));
        }
        long uncharged = books.uncharged().stream()
                .filter(one -> one.why() == Uncharged.Why.NOBODY_PAYS || one.why() == Uncharged.Why.NO_TARIFF)
                .filter(one -> one.day() != null && YearMonth.from(one.day()).equals(month))
                .count();
        if (uncharged > 0) {
            warnings.add(now.words().count("close.uncharged", uncharged));
        }
        return warnings;
    }
}
