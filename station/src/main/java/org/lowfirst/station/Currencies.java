package org.lowfirst.station;

import java.util.Currency;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The currencies that are paid in, by their ISO 4217 codes. */
public final class Currencies {

    private static final Map<String, Currency> BY_CODE = Currency.getAvailableCurrencies().stream()
            .filter(currency -> currency.getDefaultFractionDigits() >= 0)
            .collect(Collectors.toMap(Currency::getCurrencyCode, Function.identity()));

    private Currencies() {}

    public static Optional<Currency> find(String code) {
        return Optional.ofNullable(BY_CODE.get(code));
    }
}
