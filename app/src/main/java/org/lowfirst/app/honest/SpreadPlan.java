package org.lowfirst.app.honest;

import java.util.List;
import org.lowfirst.planning.contents.FillSpread;

/**
 * A plan with the spread of what its gauges will show.
 *
 * @param spread the numbers
 * @param stages for each step what the bottle's gauge will show, e.g. "113 bar, within 3"
 * @param reach what the bottle would come to were the valve left open, in the same way
 * @param fillsLeft how many such fills the bank has in it and how sure the last is
 * @param assumed what was taken for granted, in sentences
 */
public record SpreadPlan(FillSpread spread, List<String> stages, String reach, String fillsLeft, List<String> assumed) {

    public SpreadPlan {
        stages = List.copyOf(stages);
        assumed = List.copyOf(assumed);
    }
}
