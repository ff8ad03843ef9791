package org.lowfirst.planning.exchange;

import java.util.ArrayList;
import java.util.List;

/**
 * Ordering when so many fills are left.
 *
 * @param fillsLeft fills left when the order is made
 * @param chanceMissed chance that a bottle cannot be finished before the delivery
 * @param gasCost what exchanging earlier than needed costs in the year, on the mean
 * @param missedCost what bottles cost that cannot be finished before the delivery, on the mean
 */
public record OrderAt(int fillsLeft, double chanceMissed, double gasCost, double missedCost) {

    public double cost() {
        return gasCost + missedCost;
    }

    /**
     * Ordering with 0, 1, 2, ... fills left. What comes meanwhile decides how many are left when the delivery comes: too many cost
     * gas, too few cost missed fills (the newsvendor's choice).
     *
     * @param early cost of exchanging with 0, 1, 2, ... fills left, over that with 0
     * @param chances chance that 0, 1, 2, ... bottles come between order and delivery
     * @param perMissedFill what one costs
     */
    static List<OrderAt> each(double[] early, double[] chances, double perMissedFill) {
        List<OrderAt> orders = new ArrayList<>();
        for (int left = 0; left < early.length; left++) {
            double gas = 0.0;
            double missed = 0.0;
            double chanceMissed = 0.0;
            for (int come = 0; come < chances.length; come++) {
                gas += chances[come] * early[Math.max(0, left - come)];
                missed += chances[come] * Math.max(0, come - left);
                chanceMissed += come > left ? chances[come] : 0.0;
            }
            orders.add(new OrderAt(left, chanceMissed, gas, missed * perMissedFill));
        }
        return orders;
    }
}
