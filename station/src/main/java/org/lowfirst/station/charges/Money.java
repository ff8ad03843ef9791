package org.lowfirst.station.charges;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.Currency;

/**
 * An amount of money in whole smallest units of its currency; below zero for a reversal.
 *
 * @param amount carried at exactly the currency's digits after the point
 */
public record Money(BigDecimal amount, Currency currency) {

    public Money {
        int digits = currency.getDefaultFractionDigits();
        if (digits < 0) {
            throw new IllegalArgumentException("The currency (" + currency + ") must be one that is paid in.");
        }
        if (amount.stripTrailingZeros().scale() > digits) {
            throw new IllegalArgumentException("The amount (" + amount.toPlainString() + " " + currency
                    + ") must have at most " + digits + " digits after the point.\nMaybe round it first.");
        }
        amount = amount.setScale(digits);
    }

    public static Money of(String amount, String currency) {
        return new Money(new BigDecimal(amount), Currency.getInstance(currency));
    }

    public static Money zero(Currency currency) {
        return new Money(BigDecimal.ZERO, currency);
    }

    /** The exact sum; zero of the currency when there is nothing to add. */
    public static Money sum(Collection<Money> amounts, Currency currency) {
        return amounts.stream().reduce(zero(currency), Money::plus);
    }

    public Money plus(Money other) {
        if (!currency.equals(other.currency)) {
            throw new IllegalArgumentException(
                    "The currencies (" + currency + ", " + other.currency + ") must be the same to be added.");
        }
        return new Money(amount.add(other.amount), currency);
    }

    public Money minus(Money other) {
        return plus(other.negated());
    }

    public Money negated() {
        return new Money(amount.negate(), currency);
    }

    public Money times(long count) {
        return new Money(amount.multiply(BigDecimal.valueOf(count)), currency);
    }

    public boolean isZero() {
        return amount.signum() == 0;
    }
}
