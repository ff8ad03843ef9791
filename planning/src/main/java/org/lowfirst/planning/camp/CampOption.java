package org.lowfirst.planning.camp;

import org.lowfirst.gas.Amount;
import org.lowfirst.planning.ahead.Band;

/**
 * A number of supplies taken along.
 *
 * @param supplies how many
 * @param gas in them at the start
 * @param fillsMade bottles finished during the camp
 * @param daysCovered whole days before the first bottle that cannot be finished; all of them when there is none
 * @param chanceAll chance that every bottle can be finished, from 0 to 1
 */
public record CampOption(int supplies, Amount gas, Band fillsMade, Band daysCovered, double chanceAll) {}
