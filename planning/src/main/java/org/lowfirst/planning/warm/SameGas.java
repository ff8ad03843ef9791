package org.lowfirst.planning.warm;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.Density;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Mass;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.Volume;

/**
 * The gas behind a reading, seen at other temperatures.
 *
 * @param density its molar density, the same at every temperature
 * @param readings what the gauge shows at each temperature asked for, in that order
 * @param contents what is in the cylinder; null when its water volume was not given
 * @param full how full it is; null when its rating was not given
 */
public record SameGas(
        Density density,
        List<ReadingAt> readings,
        @Nullable Contents contents,
        @Nullable Fullness full) {

    public SameGas {
        readings = List.copyOf(readings);
    }

    /**
     * @param amount [mol]
     * @param mass of the gas
     * @param freeVolume the volume it takes at {@code condition}
     */
    public record Contents(Amount amount, Mass mass, Volume freeVolume, ReferenceCondition condition) {}

    /**
     * @param percent contents as part of rated contents [%]
     * @param atReference what the gauge shows at the reference temperature
     * @param full what a full one shows at the temperature of the gas behind the reading
     */
    public record Fullness(double percent, GaugePressure atReference, GaugePressure full) {}
}
