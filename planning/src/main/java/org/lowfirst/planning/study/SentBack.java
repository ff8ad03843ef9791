package org.lowfirst.planning.study;

import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;

/**
 * Gas paid for and sent back.
 *
 * @param perYear amount in a year
 * @param share of the gas received
 * @param meanReading mean of what the supplies read when they leave
 */
public record SentBack(Amount perYear, Estimate share, GaugePressure meanReading) {}
