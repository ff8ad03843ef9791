package org.lowfirst.web.money;

import java.math.BigDecimal;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.honest.BalanceReport;
import org.lowfirst.app.honest.Outcome;
import org.lowfirst.app.honest.Problem;
import org.lowfirst.app.money.Books;
import org.lowfirst.app.money.Uncharged;
import org.lowfirst.station.charges.ChargeLine;
import org.lowfirst.station.charges.GasUnit;
import org.lowfirst.station.charges.MonthResult;
import org.lowfirst.station.charges.Statement;
import org.lowfirst.web.money.StatementsPage.BankLine;
import org.lowfirst.web.money.StatementsPage.Figure;
import org.lowfirst.web.money.StatementsPage.UnchargedLine;
import org.lowfirst.web.verdict.VerdictBadge;
import org.lowfirst.web.words.Words;
import org.lowfirst.web.workplace.BenchNow;

/** Puts the accounts of a month into words. */
final class StatementsWriter {

    private final BenchNow now;
    private final Books books;
    private final YearMonth month;
    private final Words words;
    private final MoneyWriter writer;

    StatementsWriter(BenchNow now, Books books, YearMonth month) {
        this.now = now;
        this.books = books;
        this.month = month;
        this.words = now.words();
        this.writer = new MoneyWriter(words);
    }

    StatementsPage page(LocalDate today, Outcome<BalanceReport> balance) {
        List<StatementsPage.PersonLine> people =
                books.book().listStatements(month).stream().map(this::person).toList();
        return new StatementsPage(
                now.place(),
                month.toString(),
                writer.month(month),
                months(today),
                people,
                writer.money(books.book().total(month)),
                gas(inMonth()),
                result(),
                people.isEmpty() ? null : bank(balance),
                uncharged(today),
                closed(),
                closable(today) ? now.place().path("/statements/close?month=" + month) : "",
                !now.bench().areas().accounts().tariffs().isEmpty(),
                books.head().hash(),
                books.head().seq());
    }

    private List<StatementsPage.Choice> months(LocalDate today) {
        List<YearMonth> months = new ArrayList<>(books.listMonths(today));
        if (!months.contains(month)) {
            months.add(0, month);
        }
        return months.stream()
                .map(one -> new StatementsPage.Choice(one.toString(), writer.month(one)))
                .toList();
    }

    private StatementsPage.PersonLine person(Statement statement) {
        return new StatementsPage.PersonLine(
                statement.person(),
                now.place().path("/statements/person?" + query(month, statement.person())),
                words.count("statements.lines", statement.lines().size()),
                gas(statement.lines()),
                writer.money(statement.total()));
    }

    /** What tells one statement from others in an address. */
    static String query(YearMonth month, String person) {
        return "month=" + month + "&name=" + URLEncoder.encode(person, StandardCharsets.UTF_8);
    }

    private List<ChargeLine> inMonth() {
        return books.book().lines().stream()
                .filter(line -> line.month().equals(month))
                .toList();
    }

    /** Gas of some lines, reversals taken off; by unit, should there be several. */
    private String gas(List<ChargeLine> lines) {
        Map<GasUnit, BigDecimal> sums = new LinkedHashMap<>();
        for (ChargeLine line : lines) {
            sums.merge(books.working(line.id()).tariff().unit(), line.quantity(), BigDecimal::add);
        }
        return sums.entrySet().stream()
                .map(sum -> writer.number(sum.getValue()) + " " + MoneyWriter.unit(sum.getKey()))
                .collect(Collectors.joining(" + "));
    }

    private List<Figure> result() {
        MonthResult result = books.result(month);
        List<Figure> figures = new ArrayList<>();
        figures.add(new Figure(words.of("result.income"), writer.money(result.income()), false));
        figures.add(new Figure(words.of("result.content"), writer.money(result.content()), false));
        figures.add(new Figure(words.of("result.delivery"), writer.money(result.delivery()), false));
        figures.add(new Figure(words.of("result.rent"), writer.money(result.rent()), false));
        figures.add(new Figure(words.of("result.result"), writer.money(result.result()), true));
        if (!result.depositsHeld().isZero()) {
            figures.add(new Figure(words.of("result.deposits"), writer.money(result.depositsHeld()), false));
        }
        return figures;
    }

    private BankLine bank(Outcome<BalanceReport> outcome) {
        String charged =
                words.of("statements.bank.charged", gas(books.listStanding(month.atDay(1), month.atEndOfMonth())));
        if (outcome instanceof Outcome.Given<BalanceReport> given) {
            return new BankLine(
                    VerdictBadge.of(given.value()), charged, given.value().sentence());
        }
        Problem problem = ((Outcome.Declined<BalanceReport>) outcome).problem();
        return new BankLine(null, charged, problem.sentence() + " " + problem.advice());
    }

    private List<UnchargedLine> uncharged(LocalDate today) {
        return books.uncharged().stream()
                .filter(one -> one.why() != Uncharged.Why.TAKEN_BACK)
                .filter(one ->
                        YearMonth.from(one.day() == null ? today : one.day()).equals(month))
                .map(this::uncharged)
                .toList();
    }

    private UnchargedLine uncharged(Uncharged one) {
        @Nullable LocalDate day = one.day();
        String why = words.of("uncharged." + one.why().name().toLowerCase(Locale.ROOT));
        String link = one.why() == Uncharged.Why.NOBODY_PAYS
                ? payerLink(one.fill().value())
                : now.place().path("/journal/" + one.entry());
        return new UnchargedLine(day == null ? one.bottle() : writer.day(day) + ", " + one.bottle(), why, link);
    }

    private String payerLink(String fill) {
        return now.place().path("/fill/" + fill + "/payer?back=" + month);
    }

    private String closed() {
        return books.book().closes().stream()
                .filter(close -> close.month().equals(month))
                .findFirst()
                .map(close -> words.of("statements.closed", close.closedBy(), writer.day(close.closedOn())))
                .orElse(books.book().isClosed(month) ? words.of("statements.closed.with-later") : "");
    }

    private boolean closable(LocalDate today) {
        return today.isAfter(month.atEndOfMonth()) && !books.book().isClosed(month);
    }

    StatementPage statement(String person) {
        Statement statement = books.book().statement(person, month);
        return new StatementPage(
                now.place(),
                person,
                month.toString(),
                writer.month(month),
                query(month, person),
                statement.lines().stream().map(this::line).toList(),
                writer.money(statement.total()),
                closed(),
                books.head().hash(),
                books.head().seq());
    }

    private StatementPage.Line line(ChargeLine line) {
        var working = books.working(line.id());
        boolean reversal = line.kind() == ChargeLine.Kind.REVERSAL;
        boolean stands = books.book()
                .findStanding(line.fill().fill())
                .filter(line::equals)
                .isPresent();
        return new StatementPage.Line(
                writer.day(line.fill().day()),
                reversal,
                what(line),
                reversal
                        ? words.of("working.reversal", writer.gas(line.quantity(), working.tariff()))
                        : writer.working(working.charge(line), working.tariff()),
                note(line),
                writer.money(line.amount()),
                working.entry(),
                stands ? payerLink(line.fill().fill()) : "");
    }

    private String what(ChargeLine line) {
        String bottle = line.fill().guest()
                ? words.of("statement.guest", line.fill().bottle())
                : line.fill().bottle();
        return line.kind() == ChargeLine.Kind.FILL
                ? bottle
                : words.of("statement.what", bottle, writer.kind(line.kind()));
    }

    private String note(ChargeLine line) {
        List<String> notes = new ArrayList<>();
        if (!line.reason().isEmpty()) {
            notes.add(line.reason());
        }
        if (line.late()) {
            notes.add(words.of(
                    "statement.late", writer.month(YearMonth.from(line.fill().day()))));
        }
        return String.join("; ", notes);
    }
}
