package org.lowfirst.web.money;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.Currencies;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.words.Words;

/**
 * Reads amounts of money as people type them: comma or point, thousands set apart or not, the currency behind or in front. What
 * can be read two ways is asked about; what was typed stays.
 */
final class Amounts {

    private static final Pattern GROUPED = Pattern.compile("\\d{1,3}([.,])\\d{3}(?:\\1\\d{3})*");
    private static final Pattern WHOLE = Pattern.compile("\\d{0,9}");
    private static final Pattern FRACTION = Pattern.compile("\\d{0,6}");

    private final Reader reader;
    private final Words words;
    private final String currency;

    /** @param currency ISO 4217 code of the accounts; empty while there is none */
    Amounts(Reader reader, Words words, String currency) {
        this.reader = reader;
        this.words = words;
        this.currency = currency;
    }

    /** An amount that must be there, below zero perhaps; null when it could not be read. */
    @Nullable
    BigDecimal required(String field) {
        if (reader.empty(field)) {
            reader.fault(field, words.of("fault.amount.empty"));
            return null;
        }
        return read(field);
    }

    /** A price, zero when nothing was typed; null when it could not be read or is below zero. */
    @Nullable
    BigDecimal price(String field) {
        if (reader.empty(field)) {
            return BigDecimal.ZERO;
        }
        BigDecimal price = read(field);
        if (price != null && price.signum() < 0) {
            reader.fault(field, words.of("rule.price_below_zero", "", reader.text(field), ""));
            return null;
        }
        return price;
    }

    private @Nullable BigDecimal read(String field) {
        String text = withoutCurrency(reader.text(field).replace('\u2212', '-').replace('\u00a0', ' '));
        boolean below = text.startsWith("-");
        String digits = (below ? text.substring(1) : text).strip();
        if (digits.chars().anyMatch(c -> Character.isLetter(c) || Character.getType(c) == Character.CURRENCY_SYMBOL)) {
            reader.fault(
                    field,
                    currency.isEmpty()
                            ? words.of("fault.amount.letters", reader.text(field))
                            : words.of("fault.amount.currency", reader.text(field), currency));
            return null;
        }
        BigDecimal number = number(field, digits);
        return number == null || !below ? number : number.negate();
    }

    private @Nullable BigDecimal number(String field, String typed) {
        String digits = typed.replaceAll("(?<=\\d)[ '](?=\\d{3}(?!\\d))", "");
        int last = Math.max(digits.lastIndexOf('.'), digits.lastIndexOf(','));
        boolean grouping = last >= 0 && digits.indexOf(digits.charAt(last)) != last;
        String whole = last < 0 || grouping ? digits : digits.substring(0, last);
        String fraction = last < 0 || grouping ? "" : digits.substring(last + 1);
        boolean grouped = GROUPED.matcher(whole).matches();
        String joined = grouped ? whole.replaceAll("[.,]", "") : whole;
        if (!WHOLE.matcher(joined).matches() || !FRACTION.matcher(fraction).matches() || digits.length() == 0) {
            reader.fault(field, words.of("fault.amount.unreadable", reader.text(field)));
            return null;
        }
        if (!grouped && twoWays(joined, fraction)) {
            reader.fault(
                    field,
                    words.of(
                            "fault.amount.two-ways",
                            reader.text(field),
                            joined + fraction,
                            joined + "." + fraction + "0"));
            return null;
        }
        return new BigDecimal((joined.isEmpty() ? "0" : joined) + (fraction.isEmpty() ? "" : "." + fraction));
    }

    /** One separator with three digits behind it: a thousand to some, a fraction to others. */
    private static boolean twoWays(String whole, String fraction) {
        return fraction.length() == 3 && !whole.isEmpty() && whole.length() <= 3 && !whole.equals("0");
    }

    /** The amount alone, when what stands beside it is the currency of the accounts. */
    private String withoutCurrency(String text) {
        if (currency.isEmpty()) {
            return text;
        }
        String symbol = Currencies.find(currency)
                .map(money -> money.getSymbol(words.locale()))
                .orElse(currency);
        String upper = text.toUpperCase(Locale.ROOT);
        for (String mark : new String[] {currency, symbol.toUpperCase(Locale.ROOT)}) {
            if (upper.endsWith(mark)) {
                return text.substring(0, text.length() - mark.length()).strip();
            } else if (upper.startsWith(mark)) {
                return text.substring(mark.length()).strip();
            }
        }
        return text;
    }
}
