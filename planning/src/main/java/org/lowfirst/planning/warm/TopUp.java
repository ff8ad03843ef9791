package org.lowfirst.planning.warm;

import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;

/**
 * What is missing once the bottle has settled, and what it takes.
 *
 * @param worthwhile whether it is more than what valves are opened again for
 * @param missing gas that may still be let in
 * @param freeVolume the volume it takes, see {@link SettledBottle}
 * @param percent as part of rated contents [%]
 * @param fillTo settled gauge reading at the bench's temperature to come to; the supply must read more than this
 */
public record TopUp(boolean worthwhile, Amount missing, Volume freeVolume, double percent, GaugePressure fillTo) {}
