package org.lowfirst.app.money;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Comparator;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.lowfirst.app.journal.Head;
import org.lowfirst.station.FillId;
import org.lowfirst.station.charges.ChargeBook;
import org.lowfirst.station.charges.ChargeLine;
import org.lowfirst.station.charges.MonthResult;
import org.lowfirst.station.charges.RentTerms;
import org.lowfirst.station.charges.SupplierCost;

/**
 * The accounts of a bench as its journal leaves them.
 *
 * @param head the journal they were worked out from
 * @param book every line ever booked, and the months closed
 * @param workings how each line came about, by its id
 * @param uncharged fills without a line that stands, in order of their entries
 * @param paid costs that count, in order of day
 * @param bills lines of rent, in the order entered
 * @param terms rent agreed, by first day
 * @param stays how long supplies were here
 */
public record Books(
        Head head,
        ChargeBook book,
        Map<String, Working> workings,
        List<Uncharged> uncharged,
        List<Paid> paid,
        List<Billed> bills,
        NavigableMap<LocalDate, RentTerms> terms,
        Stays stays) {

    public Books {
        workings = Map.copyOf(workings);
        uncharged = List.copyOf(uncharged);
        paid = List.copyOf(paid);
        bills = List.copyOf(bills);
        terms = new TreeMap<>(terms);
    }

    public Currency currency() {
        return book.currency();
    }

    /** How a line of the book was worked out. */
    public Working working(String line) {
        return Objects.requireNonNull(workings.get(line), line);
    }

    /** The line that counts for a fill. */
    public Optional<ChargeLine> findLine(FillId fill) {
        return book.findStanding(fill.value());
    }

    /** Why no line stands for a fill; empty when one does or nobody knows the fill. */
    public Optional<Uncharged> findUncharged(FillId fill) {
        return uncharged.stream().filter(one -> one.fill().equals(fill)).findFirst();
    }

    /** Months with lines or costs, latest first; the month of a day is always among them. */
    public List<YearMonth> listMonths(LocalDate today) {
        return Stream.of(
                        Stream.of(YearMonth.from(today)),
                        book.lines().stream().map(ChargeLine::month),
                        costs().stream().map(cost -> YearMonth.from(cost.day())))
                .flatMap(months -> months)
                .distinct()
                .sorted(Comparator.reverseOrder())
                .toList();
    }

    /** Income of a month against what the supplier cost in it. */
    public MonthResult result(YearMonth month) {
        return MonthResult.of(month, book, costs());
    }

    /** The first month with lines that is not closed and lies before another. */
    public Optional<YearMonth> findOpenBefore(YearMonth month) {
        return book.lines().stream()
                .map(ChargeLine::month)
                .filter(one -> one.isBefore(month) && !book.isClosed(one))
                .min(Comparator.naturalOrder());
    }

    /** Lines of the fills of some days, whatever month they were booked in; without what was taken back. */
    public List<ChargeLine> listStanding(LocalDate from, LocalDate to) {
        Map<String, ChargeLine> latest = new LinkedHashMap<>();
        for (ChargeLine line : book.lines()) {
            latest.put(line.fill().fill(), line);
        }
        return latest.values().stream()
                .filter(line -> line.kind() != ChargeLine.Kind.REVERSAL)
                .filter(line ->
                        !line.fill().day().isBefore(from) && !line.fill().day().isAfter(to))
                .toList();
    }

    /** Every cost that counts, rent billed line by line included. */
    public List<SupplierCost> costs() {
        return Stream.concat(
                        paid.stream().map(Paid::cost),
                        bills.stream()
                                .flatMap(bill -> bill.fact().line().amount().findMoney().stream()
                                        .filter(money -> money.currency().equals(currency()))
                                        .map(money -> new SupplierCost.Rent(
                                                bill.fact().billedOn(), money))))
                .toList();
    }
}
