package org.lowfirst.planning.session;

import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.Cap;

/**
 * What becomes of one bottle.
 *
 * @param name the bottle
 * @param readiness how it ends
 * @param reading what it reads at the end, settled
 * @param stop where its valve is shut: wish, capped like a single fill's
 * @param cap why the stop is below the wish that was asked for
 */
public record BottleEnd(String name, Readiness readiness, GaugePressure reading, GaugePressure stop, Cap cap) {}
