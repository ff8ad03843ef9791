package org.lowfirst.app.money;

import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.lowfirst.app.sheet.CsvSheet;
import org.lowfirst.app.words.Wording;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.station.charges.Charge;
import org.lowfirst.station.charges.ChargeLine;
import org.lowfirst.station.charges.GasUnit;
import org.lowfirst.station.charges.Prices;

/** The lines of a month as a table for a spreadsheet: one row a line, the unit of every number in its header. */
public final class MonthSheet {

    private final Wording wording;
    private final Wording lines;
    private final Books books;

    /** A unit of gas and the condition it is stated at. */
    private record Sold(GasUnit unit, ReferenceCondition condition) {}

    public MonthSheet(Books books, Locale locale) {
        this.books = books;
        this.wording = Wording.of(MonthSheet.class, locale);
        this.lines = Wording.of(ChargeLine.class, locale);
    }

    /** @param person whose lines; empty for everybody's */
    public byte[] write(YearMonth month, String person) {
        List<ChargeLine> booked = books.book().lines().stream()
                .filter(line -> line.month().equals(month))
                .filter(line -> person.isEmpty() || line.fill().person().equals(person))
                .toList();
        List<Sold> sold = booked.stream().map(this::sold).distinct().toList();
        CsvSheet sheet = new CsvSheet();
        sheet.row(header(sold));
        booked.forEach(line -> row(sheet, line, sold));
        return sheet.toBytes();
    }

    private List<String> header(List<Sold> sold) {
        List<String> names = new ArrayList<>();
        for (String plain : List.of("month", "person", "day", "bottle", "what")) {
            names.add(wording.text("column." + plain, Map.of()));
        }
        for (Sold one : sold) {
            names.add(wording.text(
                    "column.gas." + one.unit().name().toLowerCase(Locale.ROOT),
                    Map.of("condition", one.condition().label())));
        }
        Map<String, String> currency = Map.of("currency", books.currency().getCurrencyCode());
        for (String priced : List.of("price", "fill-price", "minimum", "surcharge", "exact", "amount")) {
            names.add(wording.text("column." + priced, currency));
        }
        for (String plain : List.of("line", "corrects", "reason", "entry")) {
            names.add(wording.text("column." + plain, Map.of()));
        }
        return names;
    }

    private void row(CsvSheet sheet, ChargeLine line, List<Sold> sold) {
        Working working = books.working(line.id());
        Charge charge = working.charge(line);
        Prices prices = working.tariff().prices();
        boolean reversal = line.kind() == ChargeLine.Kind.REVERSAL;
        String corrects = line.corrects();
        sheet.text(line.month().toString())
                .text(line.fill().person())
                .text(line.fill().day().toString())
                .text(line.fill().bottle())
                .text(lines.text("line." + line.kind().name().toLowerCase(Locale.ROOT), Map.of()));
        for (Sold one : sold) {
            if (one.equals(sold(line))) {
                sheet.number(line.quantity());
            } else {
                sheet.empty();
            }
        }
        sheet.number(prices.perUnit())
                .number(prices.perFill())
                .number(prices.minimum())
                .number(line.fill().guest() ? prices.guestPercent() : BigDecimal.ZERO)
                .number(reversal ? charge.exact().negate() : charge.exact())
                .number(line.amount().amount())
                .text(line.id())
                .text(corrects == null ? "" : corrects)
                .text(line.reason())
                .number(working.entry())
                .endRow();
    }

    private Sold sold(ChargeLine line) {
        Working working = books.working(line.id());
        return new Sold(working.tariff().unit(), working.tariff().condition());
    }
}
