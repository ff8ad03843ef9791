package org.lowfirst.planning;

import org.lowfirst.gas.GaugePressure;

/**
 * A supply that stays shut during a fill.
 *
 * @param supply its name
 * @param rank its rank before the fill
 * @param reading its reading
 * @param bottle what the bottle reads when its turn comes
 * @param reason why it stays shut
 */
public record Skipped(String supply, int rank, GaugePressure reading, GaugePressure bottle, SkipReason reason) {}
