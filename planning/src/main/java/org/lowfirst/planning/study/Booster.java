package org.lowfirst.planning.study;

import org.lowfirst.gas.GaugePressure;

/**
 * A pump that takes over where the stages end, from the lowest supply that is above its inlet pressure.
 *
 * @param minimumInlet reading at the bench's temperature below which it does not draw
 * @param price what it costs to buy
 * @param upkeepPerYear what it costs a year
 * @param pricePerBoostedFill drive gas, power and wear for one bottle it works on
 */
public record Booster(GaugePressure minimumInlet, double price, double upkeepPerYear, double pricePerBoostedFill) {}
