package org.lowfirst.planning.warm;

import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;

/**
 * What a bottle comes to once it is left alone.
 *
 * @param atBench gauge reading at the bench's temperature
 * @param atReference gauge reading at the reference temperature of the rule set
 * @param percentFull contents as part of rated contents [%]
 * @param contents gas inside
 * @param freeVolume the volume it takes at 15 C and 1.013 bar (EU) or 70 F and 1 atm (US)
 */
public record SettledBottle(
        GaugePressure atBench, GaugePressure atReference, double percentFull, Amount contents, Volume freeVolume) {}
