package org.lowfirst.web.money;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.BilledStay;
import org.lowfirst.station.MoneyFact;
import org.lowfirst.station.MoneyFact.RentAgreed;
import org.lowfirst.station.MoneyFact.RentBilled;
import org.lowfirst.station.Rule;
import org.lowfirst.station.StatedMoney;
import org.lowfirst.station.StatedRent;
import org.lowfirst.station.StatedRounding;
import org.lowfirst.station.charges.DayCount;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Sender;

/** The fields of the two rent forms. */
final class RentFields {

    private static final Map<Rule, String> OF_BILL = Map.of(
            Rule.CURRENCY_UNKNOWN, "currency",
            Rule.DAY_OUT_OF_RANGE, "day",
            Rule.DAY_IN_CLOSED_MONTH, "day",
            Rule.DAYS_BACKWARDS, "to",
            Rule.DAY_COUNT_OUT_OF_RANGE, "days",
            Rule.SERIAL_EMPTY, "serial",
            Rule.AMOUNT_TOO_FINE, "amount",
            Rule.NOT_TREASURER, Sender.WHO);
    private static final Map<Rule, String> OF_TERMS = Map.of(
            Rule.CURRENCY_UNKNOWN, "terms-currency",
            Rule.DAY_OUT_OF_RANGE, "since",
            Rule.DAY_COUNT_OUT_OF_RANGE, "free",
            Rule.NOT_TREASURER, Sender.WHO);

    private final Reader reader;
    private final BenchNow now;

    RentFields(Reader reader, BenchNow now) {
        this.reader = reader;
        this.now = now;
    }

    /** The field that a rule is about. */
    static String field(MoneyFact fact, Optional<Rule> rule) {
        Map<Rule, String> fields = fact instanceof RentAgreed ? OF_TERMS : OF_BILL;
        return rule.map(broken -> fields.getOrDefault(broken, "form")).orElse("form");
    }

    /** The terms, or null with faults in the reader. */
    @Nullable
    RentAgreed terms() {
        String currency = CostsPages.currency(reader, now, "terms-currency");
        @Nullable LocalDate from = day("since");
        @Nullable BigDecimal rate = rate("agreed", currency);
        @Nullable Integer free = reader.empty("free") ? Integer.valueOf(0) : whole("free");
        reader.required(Sender.WHO, "fault.who");
        if (from == null || rate == null || free == null || !reader.form().sound()) {
            return null;
        }
        StatedRounding rounding = new StatedRounding(StatedRounding.Way.HALF_UP, RentPages.smallest(currency));
        DayCount count = reader.text("count").equals("arrival") ? DayCount.ARRIVAL_ONLY : DayCount.BOTH_ENDS;
        return new RentAgreed(from, new StatedRent(new StatedMoney(rate, currency), rounding, count, free));
    }

    /** A line of a bill, or null with faults in the reader. */
    @Nullable
    RentBilled bill() {
        String currency = CostsPages.currency(reader, now, "currency");
        String bill = reader.required("bill", "fault.bill");
        @Nullable LocalDate billed = day("day");
        String serial = reader.required("serial", "rule.serial_empty");
        @Nullable LocalDate from = day("from");
        @Nullable LocalDate to = day("to");
        @Nullable Integer days = whole("days");
        @Nullable BigDecimal rate = rate("rate", currency);
        @Nullable BigDecimal amount = new Amounts(reader, now.words(), currency).required("amount");
        reader.required(Sender.WHO, "fault.who");
        if (billed == null || from == null || to == null || days == null || rate == null || amount == null) {
            return null;
        }
        return reader.form().sound()
                ? new RentBilled(
                        bill,
                        billed,
                        new BilledStay(
                                serial,
                                from,
                                to,
                                days,
                                new StatedMoney(rate, currency),
                                new StatedMoney(amount, currency)))
                : null;
    }

    private @Nullable BigDecimal rate(String field, String currency) {
        Amounts amounts = new Amounts(reader, now.words(), currency);
        return reader.empty(field) ? amounts.required(field) : amounts.price(field);
    }

    private @Nullable LocalDate day(String field) {
        if (reader.empty(field)) {
            reader.fault(field, now.words().of("fault.day.empty"));
        }
        return reader.dayIfTyped(field);
    }

    private @Nullable Integer whole(String field) {
        String text = reader.text(field);
        if (!text.matches("[0-9]{1,5}")) {
            reader.fault(field, now.words().of("fault.days", text));
            return null;
        }
        return Integer.valueOf(text);
    }
}
