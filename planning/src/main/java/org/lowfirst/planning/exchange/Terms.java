package org.lowfirst.planning.exchange;

import org.lowfirst.gas.GaugePressure;

/**
 * What the supplier brings and asks, and what a missed fill costs.
 *
 * @param fullSupply settled reading, at the bench's temperature, of a supply as delivered
 * @param contentPrice price of one filled supply; what goes back in it is not refunded
 * @param perDelivery price of one delivery
 * @param leadDays days from the order to the delivery
 * @param perMissedFill what it costs when a bottle cannot be finished
 */
public record Terms(
        GaugePressure fullSupply, double contentPrice, double perDelivery, double leadDays, double perMissedFill) {}
