package org.lowfirst.planning.contents;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.FillPlan;

/**
 * A plan with the spread of what its gauges will show.
 *
 * @param plan the plan
 * @param stages one for each step of the plan
 * @param reach what the bottle would come to were the valve left open at every supply
 * @param chanceReaches chance that it comes to its stop
 * @param last the last complete fill the plan counts, and how sure it is; null when it counts none
 * @param next the fill after it, and where that stops; null when counting ended
 */
public record FillSpread(
        FillPlan plan,
        List<StageSpread> stages,
        Spread reach,
        double chanceReaches,
        @Nullable CountedFill last,
        @Nullable CountedFill next) {

    private static final double NINETY_FIVE = 0.95;

    /**
     * A reading to come. Lasting errors of gauges that nothing was learned about are equally likely anywhere within their limits:
     * they are rectangles, the rest of the error is normal (decision 0041).
     *
     * @param expected what the gauge will show
     * @param standardDeviation of that, the scatter of the reading itself included
     * @param rectangles half-widths of the rectangular errors in it
     */
    public record Spread(GaugePressure expected, GaugePressure standardDeviation, List<GaugePressure> rectangles) {

        public Spread {
            rectangles = List.copyOf(rectangles);
        }

        /** With a normal error. */
        public Spread(GaugePressure expected, GaugePressure standardDeviation) {
            this(expected, standardDeviation, List.of());
        }

        /** "113 bar, within 3": the half-width that covers it with 95 % chance. */
        public GaugePressure within95() {
            return within(NINETY_FIVE);
        }

        /**
         * The half-width that covers it with a chance.
         *
         * @param chance more than 0 and less than 1
         */
        public GaugePressure within(double chance) {
            if (!(chance > 0.0 && chance < 1.0)) {
                throw new IllegalArgumentException("The chance (" + chance + ") must be between 0 and 1.");
            }
            return new GaugePressure(error().within(chance));
        }

        /** Chance that it is at least so much. */
        double chanceAtLeast(GaugePressure least) {
            double margin_Pa = expected.pascals() - least.pascals();
            return standardDeviation.pascals() > 0.0 ? error().below(margin_Pa) : margin_Pa >= 0.0 ? 1.0 : 0.0;
        }

        private ErrorSum error() {
            return ErrorSum.of(
                    standardDeviation.pascals(),
                    rectangles.stream().map(GaugePressure::pascals).toList());
        }
    }

    /**
     * What both gauges show at the end of a stage.
     *
     * @param supply name of the supply
     * @param bottle the bottle's gauge; no spread where the valve is shut at the stop reading
     * @param supplyAfter the supply's gauge
     */
    public record StageSpread(String supply, Spread bottle, Spread supplyAfter) {}

    /**
     * One fill of several like it, counted from the bank as it is.
     *
     * @param number 1 for this one
     * @param reach what it would come to were the valve left open
     * @param chanceReaches chance that it comes to its stop
     */
    public record CountedFill(int number, Spread reach, double chanceReaches) {}

    public FillSpread {
        stages = List.copyOf(stages);
    }
}
