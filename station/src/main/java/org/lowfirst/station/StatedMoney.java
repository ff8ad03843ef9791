package org.lowfirst.station;

import java.math.BigDecimal;
import java.util.Optional;
import org.lowfirst.station.charges.Money;

/**
 * An amount of money as typed; may be finer than it can be paid, and in a currency there is none of.
 *
 * @param currency ISO 4217 code
 */
public record StatedMoney(BigDecimal value, String currency) implements StatedQuantity {

    @Override
    public String symbol() {
        return currency;
    }

    /** The amount; empty when it cannot be paid. */
    public Optional<Money> findMoney() {
        return Currencies.find(currency)
                .filter(money -> value.stripTrailingZeros().scale() <= money.getDefaultFractionDigits())
                .map(money -> new Money(value, money));
    }
}
