package org.lowfirst.planning;

import java.util.List;
import org.lowfirst.gas.GaugePressure;

/**
 * One fill as a picture has it: the bottle rises stage by stage, each supply falls to meet it.
 *
 * @param start the bottle's reading before the first stage
 * @param treads one per stage
 * @param stop the line to reach
 * @param top the highest reading in the picture
 */
public record Staircase(GaugePressure start, List<Tread> treads, GaugePressure stop, GaugePressure top) {

    public Staircase {
        treads = List.copyOf(treads);
    }

    /** One stage: who gives, and both readings before and after. */
    public record Tread(String supply, int rank, Change bottle, Change supplyReading, boolean atStop) {}

    public static Staircase of(FillPlan plan) {
        GaugePressure top = plan.stop().reading();
        for (Step step : plan.fill().steps()) {
            GaugePressure from = step.supplyReading().before();
            top = from.compareTo(top) > 0 ? from : top;
        }
        List<Tread> treads = plan.fill().steps().stream()
                .map(step -> new Tread(
                        step.supply(),
                        step.rank(),
                        step.bottle(),
                        step.supplyReading(),
                        step.ends() == org.lowfirst.transfer.Ending.TARGET))
                .toList();
        return new Staircase(
                plan.request().bottle().reading(), treads, plan.stop().reading(), top);
    }
}
