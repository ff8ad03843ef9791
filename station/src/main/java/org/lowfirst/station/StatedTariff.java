package org.lowfirst.station;

import java.util.Optional;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.station.charges.GasUnit;
import org.lowfirst.station.charges.Prices;
import org.lowfirst.station.charges.Tariff;

/**
 * How fills are charged, as typed; may hold what no tariff can.
 *
 * @param currency ISO 4217 code
 * @param unit what gas is sold by
 * @param condition reference condition the unit is stated at
 * @param quantityDecimals digits after the point of a quantity as printed and charged
 */
public record StatedTariff(
        String currency,
        GasUnit unit,
        ReferenceCondition condition,
        int quantityDecimals,
        StatedPrices prices,
        StatedRounding rounding) {

    /** The tariff it makes; empty when it makes none. */
    public Optional<Tariff> findTariff() {
        if (TariffRules.check(this) != null) {
            return Optional.empty();
        }
        return Currencies.find(currency)
                .map(money -> new Tariff(
                        money,
                        unit,
                        condition,
                        new Prices(prices.perUnit(), prices.perFill(), prices.minimum(), prices.guestPercent()),
                        rounding.rule(),
                        quantityDecimals));
    }
}
