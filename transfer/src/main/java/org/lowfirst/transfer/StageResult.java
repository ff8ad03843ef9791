package org.lowfirst.transfer;

import org.lowfirst.gas.Amount;

/**
 * State after one stage.
 *
 * @param supply the supply, shut again
 * @param hose the hose, at the supply's pressure
 * @param bottle the bottle, transfer valve shut
 * @param moved what the bottle gained
 * @param ending how the stage ended
 */
public record StageResult(Vessel supply, Hose hose, Vessel bottle, Amount moved, Ending ending) {}
