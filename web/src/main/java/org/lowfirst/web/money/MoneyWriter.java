package org.lowfirst.web.money;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.lowfirst.app.words.Wording;
import org.lowfirst.gas.Digits;
import org.lowfirst.station.charges.Charge;
import org.lowfirst.station.charges.ChargeLine;
import org.lowfirst.station.charges.GasUnit;
import org.lowfirst.station.charges.Money;
import org.lowfirst.station.charges.Prices;
import org.lowfirst.station.charges.RentFinding;
import org.lowfirst.station.charges.Tariff;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.words.Words;

/** Writes money, gas as it is charged, and how an amount was worked out. Immutable. */
final class MoneyWriter {

    private final Words words;
    private final DateTimeFormatter day;
    private final DateTimeFormatter month;
    private final Wording charges;

    MoneyWriter(Words words) {
        this.words = words;
        this.day = DateTimeFormatter.ofPattern(words.of("date.day"), words.locale());
        this.month = DateTimeFormatter.ofPattern("MMMM yyyy", words.locale());
        this.charges = Wording.of(ChargeLine.class, words.locale());
    }

    /** An amount with its currency, e.g. "5.19 EUR". */
    String money(Money money) {
        return number(money.amount()) + " " + money.currency().getCurrencyCode();
    }

    /** A number with the digits it has, thousands set apart. */
    String number(BigDecimal number) {
        return Figures.number(number, words.locale());
    }

    /** Gas with its unit, e.g. "472.1 L". */
    String gas(BigDecimal quantity, Tariff tariff) {
        return number(quantity) + " " + unit(tariff.unit());
    }

    static String unit(GasUnit unit) {
        return unit.unit().symbol();
    }

    String day(LocalDate date) {
        return day.format(date);
    }

    String month(YearMonth date) {
        return month.format(date);
    }

    /** What a line is. */
    String kind(ChargeLine.Kind kind) {
        return charges.text("line." + kind.name().toLowerCase(Locale.ROOT), Map.of());
    }

    /** What is wrong with a line of rent. */
    String problem(RentFinding.Problem problem) {
        return charges.text("rent." + problem.name().toLowerCase(Locale.ROOT).replace('_', '-'), Map.of());
    }

    /** A tariff in a few words, without what is zero. */
    String prices(Tariff tariff) {
        Prices prices = tariff.prices();
        List<String> parts = new ArrayList<>();
        boolean feet = tariff.unit() == GasUnit.STANDARD_CUBIC_FOOT;
        parts.add(words.of(
                feet ? "prices.a-cubic-foot" : "prices.a-litre",
                price(prices.perUnit(), tariff) + " " + tariff.currency().getCurrencyCode()));
        add(parts, "prices.a-fill", prices.perFill(), price(prices.perFill(), tariff));
        add(parts, "prices.at-least", prices.minimum(), price(prices.minimum(), tariff));
        add(
                parts,
                "prices.guests-more",
                prices.guestPercent(),
                Digits.in(words.locale()).plain(prices.guestPercent()));
        return String.join(", ", parts);
    }

    private void add(List<String> parts, String key, BigDecimal value, String shown) {
        if (value.signum() > 0) {
            parts.add(words.of(key, shown));
        }
    }

    /** How a charge was worked out, so that it can be done again by hand. */
    String working(Charge charge, Tariff tariff) {
        Prices prices = tariff.prices();
        List<String> steps = new ArrayList<>();
        steps.add(words.of(
                "working.gas",
                gas(charge.quantity(), tariff),
                price(prices.perUnit(), tariff),
                price(charge.gas(), tariff)));
        add(steps, "working.fill", prices.perFill(), price(prices.perFill(), tariff));
        if (charge.minimumApplied()) {
            steps.add(words.of("working.minimum", price(prices.minimum(), tariff)));
        }
        if (charge.surcharge().signum() > 0) {
            steps.add(words.of(
                    "working.guest",
                    Digits.in(words.locale()).plain(prices.guestPercent()),
                    price(charge.surcharge(), tariff)));
        }
        if (charge.exact().compareTo(charge.amount().amount()) != 0) {
            boolean said = charge.exact().compareTo(charge.gas()) == 0;
            String paid = number(charge.amount().amount());
            steps.add(
                    said
                            ? words.of("working.rounded", paid)
                            : words.of("working.sum-rounded", price(charge.exact(), tariff), paid));
        }
        return String.join("; ", steps);
    }

    /** As fine as it is, and no coarser than the currency is paid. */
    private String price(BigDecimal price, Tariff tariff) {
        int digits = tariff.currency().getDefaultFractionDigits();
        BigDecimal stripped = price.stripTrailingZeros();
        return number(stripped.scale() < digits ? stripped.setScale(digits) : stripped);
    }
}
