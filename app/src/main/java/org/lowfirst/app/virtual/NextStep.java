package org.lowfirst.app.virtual;

import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.Position;
import org.lowfirst.gas.GaugePressure;

/**
 * The step that the guide shows.
 *
 * @param supply name of the supply it is about; empty before and after the stages
 * @param expected what the bottle's gauge should come to; null when nothing flows
 * @param neverAbove what it must never pass
 */
public record NextStep(
        Position position, String supply, @Nullable GaugePressure expected, GaugePressure neverAbove) {}
