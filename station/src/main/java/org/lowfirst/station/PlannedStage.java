package org.lowfirst.station;

/**
 * A stage that is to be done.
 *
 * @param until what the bottle's gauge should show when it ends
 * @param atStop whether the bottle is shut there although the supply could give more; else both come to rest there
 */
public record PlannedStage(FillId fill, SupplyId supply, StatedPressure until, boolean atStop) {}
