package org.lowfirst.web.money;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.money.Books;
import org.lowfirst.app.money.Paid;
import org.lowfirst.station.CostKind;
import org.lowfirst.station.MoneyFact.CostEntered;
import org.lowfirst.station.Rule;
import org.lowfirst.station.StatedCost;
import org.lowfirst.station.StatedMoney;
import org.lowfirst.station.charges.RentStay;
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

/** Enters what the supplier was paid. */
@Controller
public final class CostsPages {

    private static final Map<Rule, String> FIELDS = Map.of(
            Rule.CURRENCY_UNKNOWN, "currency",
            Rule.SERIAL_EMPTY, "serial",
            Rule.AMOUNT_ZERO, "amount",
            Rule.AMOUNT_BELOW_ZERO, "amount",
            Rule.AMOUNT_TOO_FINE, "amount",
            Rule.DAY_OUT_OF_RANGE, "day",
            Rule.DAY_IN_CLOSED_MONTH, "day",
            Rule.NOT_TREASURER, Sender.WHO);

    private static final int MOST_SHOWN = 60;

    private final Workplace workplace;

    public CostsPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/costs")
    View show(@PathVariable String bench) {
        BenchNow now = workplace.open(bench);
        Form form = Form.with(Map.of("day", StatementsPages.today(workplace).toString(), "kind", "content"));
        return workplace.screens().show(page(now, form));
    }

    @PostMapping("/at/{bench}/costs")
    View enter(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        @Nullable StatedCost cost = read(reader, now);
        Sender sender = Sender.of(typed);
        if (!sender.hasKey()) {
            reader.fault("form", now.words().of("fault.key"));
        }
        if (cost == null || !reader.form().sound()) {
            return workplace.screens().refused(page(now, reader.form()));
        }
        Recording recording =
                workplace.benches().keepingAccounts().enter(now.id(), new CostEntered(cost), sender.submission());
        String fault = workplace.fault(recording);
        if (fault.isEmpty()) {
            return Redirects.saved(
                    now.place().path("/costs"), Answers.entry(recording).orElse(0L), sender.who());
        }
        String field = Answers.rule(recording)
                .map(rule -> FIELDS.getOrDefault(rule, "form"))
                .orElse("form");
        Form form = reader.form().faulting(field, fault);
        return workplace
                .screens()
                .refused(page(now, Answers.confirmable(recording) ? form.filled(Form.CONFIRMABLE, "yes") : form));
    }

    private static @Nullable StatedCost read(Reader reader, BenchNow now) {
        String currency = currency(reader, now, "currency");
        if (reader.empty("day")) {
            reader.fault("day", now.words().of("fault.day.empty"));
        }
        @Nullable LocalDate day = reader.dayIfTyped("day");
        @Nullable BigDecimal amount = new Amounts(reader, now.words(), currency).required("amount");
        reader.required(Sender.WHO, "fault.who");
        String serial = reader.text("serial");
        return day == null || amount == null
                ? null
                : new StatedCost(
                        kind(reader.text("kind")),
                        day,
                        serial.isEmpty() ? null : serial,
                        new StatedMoney(amount, currency),
                        reader.text("note"));
    }

    /** The currency of the accounts; while there is none, the one typed. */
    static String currency(Reader reader, BenchNow now, String field) {
        String kept = now.bench().areas().accounts().currency();
        return kept == null ? reader.required(field, "fault.currency").toUpperCase(Locale.ROOT) : kept;
    }

    private static CostKind kind(String text) {
        return Arrays.stream(CostKind.values())
                .filter(kind -> value(kind).equals(text))
                .findFirst()
                .orElse(CostKind.CONTENT);
    }

    private static String value(CostKind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private CostsPage page(BenchNow now, Form form) {
        Books books = workplace.benches().keepingAccounts().books(now.id());
        MoneyWriter writer = new MoneyWriter(now.words());
        List<Paid> latest = new ArrayList<>(books.paid());
        Collections.reverse(latest);
        return new CostsPage(
                now.place(),
                Optional.ofNullable(now.bench().areas().accounts().currency()).orElse(""),
                Arrays.stream(CostKind.values())
                        .map(kind -> new CostsPage.Kind(value(kind), now.words().of("cost." + value(kind))))
                        .toList(),
                books.stays().known().stream().map(RentStay::serial).distinct().toList(),
                latest.stream()
                        .limit(MOST_SHOWN)
                        .map(paid -> line(paid, now, writer))
                        .toList(),
                form,
                workplace.ids().next());
    }

    private static CostsPage.Line line(Paid paid, BenchNow now, MoneyWriter writer) {
        String serial = paid.stated().serial();
        String note = paid.stated().note();
        String of = serial == null ? "" : now.words().of("costs.of", serial);
        return new CostsPage.Line(
                writer.day(paid.stated().day()),
                now.words().of("cost." + value(paid.stated().kind())),
                of.isEmpty() || note.isEmpty() ? of + note : of + ", " + note,
                writer.money(paid.cost().amount()),
                paid.entry());
    }
}
