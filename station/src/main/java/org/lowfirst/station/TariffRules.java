package org.lowfirst.station;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a tariff can be. */
final class TariffRules {

    /** Five times the plain charge; more is a slip (common practice, no source). */
    private static final BigDecimal HIGHEST_PERCENT = BigDecimal.valueOf(400);

    private static final int MOST_DECIMALS = 3;

    private TariffRules() {}

    static @Nullable Refused check(StatedTariff tariff) {
        Currency currency = Currencies.find(tariff.currency()).orElse(null);
        if (currency == null) {
            return Refused.of(Rule.CURRENCY_UNKNOWN, tariff.currency());
        }
        StatedPrices prices = tariff.prices();
        for (BigDecimal price : List.of(prices.perUnit(), prices.perFill(), prices.minimum())) {
            if (price.signum() < 0) {
                return new Refused(Rule.PRICE_BELOW_ZERO, "", new StatedMoney(price, tariff.currency()), null);
            }
        }
        BigDecimal percent = prices.guestPercent();
        if (percent.signum() < 0 || percent.compareTo(HIGHEST_PERCENT) > 0) {
            return Refused.of(Rule.GUEST_PERCENT_OUT_OF_RANGE, percent.toPlainString());
        }
        if (tariff.quantityDecimals() < 0 || tariff.quantityDecimals() > MOST_DECIMALS) {
            return Refused.of(Rule.QUANTITY_DECIMALS_OUT_OF_RANGE, Integer.toString(tariff.quantityDecimals()));
        }
        return step(tariff.rounding(), currency);
    }

    static @Nullable Refused step(StatedRounding rounding, Currency currency) {
        BigDecimal step = rounding.step();
        boolean payable = step.signum() > 0 && step.stripTrailingZeros().scale() <= currency.getDefaultFractionDigits();
        return payable
                ? null
                : new Refused(
                        Rule.ROUNDING_STEP_NOT_PAYABLE,
                        "",
                        new StatedMoney(step, currency.getCurrencyCode()),
                        new StatedMoney(
                                BigDecimal.ONE.movePointLeft(currency.getDefaultFractionDigits()),
                                currency.getCurrencyCode()));
    }
}
