package org.lowfirst.planning.study;

import org.lowfirst.gas.Amount;

/**
 * What an alternative needs before the first fill.
 *
 * @param places cylinders on site at any time: connected, full in store, or waiting to be fetched
 * @param mostGas gas on site when all are full; rules on storing oxygen go by this
 * @param firstOutlay money for lines, booster, the first supplies and their delivery
 */
public record Storage(int places, Amount mostGas, double firstOutlay) {}
