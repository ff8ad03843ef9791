package org.lowfirst.web.money;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeParseException;
import java.util.List;
import org.lowfirst.app.bench.KeepingAccounts;
import org.lowfirst.app.money.Books;
import org.lowfirst.app.money.MonthSheet;
import org.lowfirst.app.paper.Heading;
import org.lowfirst.app.paper.MonthStatement;
import org.lowfirst.app.paper.PaperSize;
import org.lowfirst.app.paper.PrintedPaper;
import org.lowfirst.app.paper.PrintingPapers;
import org.lowfirst.station.RuleSet;
import org.lowfirst.station.charges.ChargeLine;
import org.lowfirst.station.charges.GasUnit;
import org.lowfirst.station.charges.Statement;
import org.lowfirst.web.view.NoSuchThing;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;

/** Statements by month and person: pages, table for a spreadsheet, PDF. */
@Controller
public final class StatementsPages {

    private final Workplace workplace;

    public StatementsPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/statements")
    View month(@PathVariable String bench, @RequestParam(defaultValue = "") String month) {
        BenchNow now = workplace.open(bench);
        KeepingAccounts accounts = workplace.benches().keepingAccounts();
        Books books = accounts.books(now.id());
        YearMonth chosen = month.isEmpty() ? YearMonth.from(today(workplace)) : month(month);
        return workplace
                .screens()
                .show(new StatementsWriter(now, books, chosen)
                        .page(today(workplace), accounts.balance(now.id(), chosen)));
    }

    @GetMapping("/at/{bench}/statements/person")
    View person(@PathVariable String bench, @RequestParam String month, @RequestParam String name) {
        BenchNow now = workplace.open(bench);
        Books books = workplace.benches().keepingAccounts().books(now.id());
        return workplace.screens().show(new StatementsWriter(now, books, month(month)).statement(name));
    }

    /** @param name whose lines; empty for everybody's */
    @GetMapping("/at/{bench}/statements/csv")
    View csv(@PathVariable String bench, @RequestParam String month, @RequestParam(defaultValue = "") String name) {
        BenchNow now = workplace.open(bench);
        Books books = workplace.benches().keepingAccounts().books(now.id());
        byte[] sheet = new MonthSheet(books, now.words().locale()).write(month(month), name);
        return new SavedFile("text/csv;header=present;charset=utf-8", "charges-" + month(month) + ".csv", sheet);
    }

    @GetMapping("/at/{bench}/statements/pdf")
    View pdf(@PathVariable String bench, @RequestParam String month, @RequestParam String name) {
        BenchNow now = workplace.open(bench);
        Books books = workplace.benches().keepingAccounts().books(now.id());
        Statement statement = books.book().statement(name, month(month));
        PaperSize size = now.bench().settings().rules() == RuleSet.US ? PaperSize.LETTER : PaperSize.A4;
        PrintingPapers printing = new PrintingPapers(
                workplace.benches(), workplace.clock(), now.words().locale());
        PrintedPaper paper = printing.monthStatement(paper(now, printing.heading(now.id()), books, statement), size);
        return new SavedFile("application/pdf", paper.fileName(), paper.pdf());
    }

    private static MonthStatement paper(BenchNow now, Heading heading, Books books, Statement statement) {
        MoneyWriter writer = new MoneyWriter(now.words());
        List<GasUnit> units = statement.lines().stream()
                .map(line -> books.working(line.id()).tariff().unit())
                .distinct()
                .toList();
        boolean one = units.size() == 1;
        return new MonthStatement(
                heading,
                statement.person(),
                statement.month(),
                statement.currency(),
                one ? MoneyWriter.unit(units.get(0)) : "",
                statement.lines().stream()
                        .map(line -> new MonthStatement.Line(
                                line.fill().day(),
                                what(line, one ? "" : gasUnit(books, line), now, writer),
                                line.quantity(),
                                line.amount()))
                        .toList());
    }

    private static String gasUnit(Books books, ChargeLine line) {
        return MoneyWriter.unit(books.working(line.id()).tariff().unit());
    }

    /** @param unit of the gas, where a statement has several */
    private static String what(ChargeLine line, String unit, BenchNow now, MoneyWriter writer) {
        String bottle = unit.isEmpty() ? line.fill().bottle() : line.fill().bottle() + " [" + unit + "]";
        String what = line.fill().guest() ? now.words().of("statement.guest", bottle) : bottle;
        String kind = line.kind() == ChargeLine.Kind.FILL
                ? what
                : now.words().of("statement.what", what, writer.kind(line.kind()));
        return line.reason().isEmpty() ? kind : kind + ": " + line.reason();
    }

    static LocalDate today(Workplace workplace) {
        return LocalDate.ofInstant(
                workplace.clock().instant(), workplace.clock().getZone());
    }

    /** @throws NoSuchThing for what is no month */
    static YearMonth month(String text) {
        try {
            return YearMonth.parse(text);
        } catch (DateTimeParseException none) {
            throw new NoSuchThing("month " + text);
        }
    }
}
