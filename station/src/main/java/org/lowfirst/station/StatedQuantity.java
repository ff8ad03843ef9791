package org.lowfirst.station;

import java.math.BigDecimal;

/** A quantity as a person stated it: the digits and the unit that were typed. */
public sealed interface StatedQuantity extends Stated
        permits StatedPressure, StatedAbsolutePressure, StatedTemperature, StatedVolume, StatedMoney {

    /** The number as typed, trailing zeros included. */
    BigDecimal value();

    /** Symbol of the unit that was typed, e.g. "psi". */
    String symbol();
}
