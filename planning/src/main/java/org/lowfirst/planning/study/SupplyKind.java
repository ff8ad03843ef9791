package org.lowfirst.planning.study;

import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;

/**
 * A supply as one can rent it.
 *
 * @param name what the supplier calls it
 * @param waterVolume internal volume
 * @param deliveredLowest least it reads on delivery, settled at the reference temperature
 * @param deliveredHighest most it reads; any contents between the two are as likely
 * @param contentPrice price of one filled supply; what is sent back in it is not refunded
 * @param rentPerDay rent of one cylinder for one day
 */
public record SupplyKind(
        String name,
        Volume waterVolume,
        GaugePressure deliveredLowest,
        GaugePressure deliveredHighest,
        double contentPrice,
        double rentPerDay) {

    /** A kind that always comes with the same reading. */
    public SupplyKind(
            String name, Volume waterVolume, GaugePressure delivered, double contentPrice, double rentPerDay) {
        this(name, waterVolume, delivered, delivered, contentPrice, rentPerDay);
    }
}
