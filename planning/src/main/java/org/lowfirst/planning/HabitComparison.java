package org.lowfirst.planning;

import java.util.List;
import org.lowfirst.gas.GaugePressure;

/**
 * What the habit of opening the fullest supply first costs against lowest first.
 *
 * @param finalReading what this bottle would read at the end of a fullest-first fill
 * @param bankAfter the bank after this one fill, fullest first
 * @param fillsLeft such fills from the bank as the bottle finds it, all fullest first
 * @param savedFills complete fills that lowest first has more than that
 */
public record HabitComparison(
        GaugePressure finalReading, List<RankedSupply> bankAfter, FillsLeft fillsLeft, int savedFills) {

    public HabitComparison {
        bankAfter = List.copyOf(bankAfter);
    }
}
