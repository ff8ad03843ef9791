package org.lowfirst.station.charges;

import java.math.BigDecimal;

/**
 * One charge with its working, before and after rounding.
 *
 * @param quantity as printed and charged
 * @param gas quantity times price
 * @param minimumApplied the minimum was more
 * @param surcharge for guests, zero for members
 * @param exact before rounding
 * @param amount what is owed
 */
public record Charge(
        BigDecimal quantity,
        BigDecimal gas,
        boolean minimumApplied,
        BigDecimal surcharge,
        BigDecimal exact,
        Money amount) {}
