package org.lowfirst.app.honest;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.contents.GasTemperature;
import org.lowfirst.station.FillId;

/** How warm the gas in a bottle was during and soon after its fill. */
interface WarmthOfFills {

    /**
     * @param fill the fill; null when the reading belongs to none
     * @param bench temperature of the bench
     */
    GasTemperature findAt(@Nullable FillId fill, Instant at, Temperature bench);
}
