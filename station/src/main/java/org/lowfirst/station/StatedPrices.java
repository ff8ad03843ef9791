package org.lowfirst.station;

import java.math.BigDecimal;

/**
 * Prices as typed, in the currency of their tariff.
 *
 * @param perUnit for each unit of gas
 * @param perFill for each fill, whatever went in
 * @param minimum least charge for a fill, before the surcharge
 * @param guestPercent added for guests [%]
 */
public record StatedPrices(BigDecimal perUnit, BigDecimal perFill, BigDecimal minimum, BigDecimal guestPercent) {}
