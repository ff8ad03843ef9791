package org.lowfirst.planning.study;

/**
 * What a fill costs, by what is paid for.
 *
 * @param content the filled supplies
 * @param deliveries deliveries
 * @param rent cylinders, day by day
 * @param purchases lines and booster paid off, and the booster's upkeep
 * @param boosting what the booster takes for the fills it works on
 * @param missed what fills cost that could not be made
 */
public record CostParts(
        double content, double deliveries, double rent, double purchases, double boosting, double missed) {

    public double sum() {
        return content + deliveries + rent + purchases + boosting + missed;
    }
}
