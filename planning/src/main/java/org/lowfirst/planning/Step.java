package org.lowfirst.planning;

import org.lowfirst.gas.Amount;
import org.lowfirst.transfer.Ending;

/**
 * One stage of a plan.
 *
 * @param supply name of the supply to open
 * @param rank its rank before the fill
 * @param bottle the bottle's reading before and after
 * @param supplyReading the supply's reading before and after
 * @param moved what the bottle gains
 * @param ends {@link Ending#EQUAL} or {@link Ending#TARGET}
 */
public record Step(String supply, int rank, Change bottle, Change supplyReading, Amount moved, Ending ends) {}
