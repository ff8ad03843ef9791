package org.lowfirst.planning.study;

/**
 * What is paid apart from the supplies themselves.
 *
 * @param perDelivery price of one delivery, however many supplies it brings
 * @param leadDays days from sending for supplies to their arrival, 0 for at once
 * @param perMissedFill what it costs when a bottle cannot be finished
 * @param perInterconnect price of one line between two supplies; a bank of n takes n - 1
 * @param writeOffYears years over which lines and booster are paid off
 */
public record Prices(
        double perDelivery, double leadDays, double perMissedFill, double perInterconnect, double writeOffYears) {}
