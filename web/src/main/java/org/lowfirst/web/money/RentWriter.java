package org.lowfirst.web.money;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.lowfirst.app.money.Billed;
import org.lowfirst.app.money.Books;
import org.lowfirst.station.BilledStay;
import org.lowfirst.station.MoneyFact.RentAgreed;
import org.lowfirst.station.charges.DayCount;
import org.lowfirst.station.charges.Money;
import org.lowfirst.station.charges.RentCheck;
import org.lowfirst.station.charges.RentFinding;
import org.lowfirst.station.charges.RentStay;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.money.RentPage.BillLine;
import org.lowfirst.web.money.RentPage.StayLine;
import org.lowfirst.web.words.Words;
import org.lowfirst.web.workplace.BenchNow;

/** Puts rent into words: what was agreed, what may be charged this month, what bills say. */
final class RentWriter {

    private final BenchNow now;
    private final Books books;
    private final LocalDate today;
    private final Words words;
    private final MoneyWriter writer;

    RentWriter(BenchNow now, Books books, LocalDate today) {
        this.now = now;
        this.books = books;
        this.today = today;
        this.words = now.words();
        this.writer = new MoneyWriter(words);
    }

    RentPage page(Form terms, Form bill, String key) {
        return new RentPage(
                now.place(),
                Optional.ofNullable(now.bench().areas().accounts().currency()).orElse(""),
                agreed(),
                writer.month(YearMonth.from(today)),
                stays(),
                String.join(", ", books.stays().unnamed()),
                books.stays().known().stream().map(RentStay::serial).distinct().toList(),
                bills(),
                over(),
                terms,
                bill,
                key);
    }

    private List<String> agreed() {
        List<String> lines = new ArrayList<>();
        for (RentAgreed agreed : now.bench().areas().accounts().rents()) {
            String per = writer.number(agreed.rent().perDay().value()) + " "
                    + agreed.rent().perDay().currency();
            boolean both = agreed.rent().dayCount() == DayCount.BOTH_ENDS;
            lines.add(words.of(
                    both ? "rent.agreed.both" : "rent.agreed.arrival",
                    writer.day(agreed.from()),
                    per,
                    agreed.rent().freeDays()));
        }
        Collections.reverse(lines);
        return lines;
    }

    /** The stays that reach into this month, with what may be charged so far. */
    private List<StayLine> stays() {
        LocalDate first = today.withDayOfMonth(1);
        return books.stays().known().stream()
                .filter(stay -> stay.left() == null || !stay.left().isBefore(first))
                .map(stay -> stay(stay, first))
                .toList();
    }

    private StayLine stay(RentStay stay, LocalDate first) {
        LocalDate left = stay.left();
        String here = left == null
                ? words.of("rent.stay.here", writer.day(stay.arrived()))
                : words.of("rent.stay.left", writer.day(stay.arrived()), writer.day(left));
        if (books.terms().isEmpty()) {
            return new StayLine(stay.serial(), here, "", "");
        }
        long days = RentCheck.countDays(List.of(stay), books.terms(), stay.serial(), first, today);
        Money expected = RentCheck.expected(List.of(stay), books.terms(), stay.serial(), first, today);
        return new StayLine(stay.serial(), here, words.count("rent.days", days), writer.money(expected));
    }

    private List<BillLine> bills() {
        List<BillLine> lines = new ArrayList<>();
        books.bills().forEach(bill -> lines.add(bill(bill)));
        Collections.reverse(lines);
        return lines;
    }

    private BillLine bill(Billed billed) {
        BilledStay line = billed.fact().line();
        RentFinding finding = billed.finding();
        String what =
                words.of("rent.bill.what", line.serial(), writer.day(line.from()), writer.day(line.to()), line.days());
        String charged =
                writer.number(line.amount().value()) + " " + line.amount().currency();
        if (finding == null) {
            return new BillLine(
                    billed.fact().bill(),
                    what,
                    charged,
                    "",
                    false,
                    List.of(words.of("rent.unchecked")),
                    billed.entry());
        }
        boolean fine = finding.problems().isEmpty();
        List<String> verdict = new ArrayList<>();
        finding.problems().stream().sorted().map(writer::problem).forEach(verdict::add);
        if (!finding.notHere().isEmpty()) {
            verdict.add(words.of("rent.not-here", days(finding.notHere())));
        }
        if (!finding.chargedBefore().isEmpty()) {
            verdict.add(words.of("rent.before", days(finding.chargedBefore())));
        }
        if (fine) {
            verdict.add(words.of("rent.fine"));
        }
        return new BillLine(
                billed.fact().bill(),
                what,
                writer.money(finding.line().amount()),
                words.of("rent.payable", finding.payableDays(), writer.money(finding.payable())),
                fine,
                verdict,
                billed.entry());
    }

    private String days(List<LocalDate> days) {
        String first = writer.day(days.get(0));
        return days.size() == 1
                ? first
                : words.of("rent.days.range", days.size(), first, writer.day(days.get(days.size() - 1)));
    }

    private String over() {
        List<Money> over = books.bills().stream()
                .map(Billed::finding)
                .flatMap(finding -> Optional.ofNullable(finding).stream())
                .map(RentFinding::overcharge)
                .filter(money -> money.amount().signum() > 0)
                .toList();
        return over.isEmpty() ? "" : writer.money(Money.sum(over, books.currency()));
    }
}
