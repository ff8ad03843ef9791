package org.lowfirst.transfer.warm;

import java.util.List;
import org.lowfirst.gas.Temperature;
import org.lowfirst.transfer.Hose;

/**
 * What came of a warm stage.
 *
 * @param bottle the bottle when the valve is shut
 * @param source the source then
 * @param hose the hose then, at the source's pressure
 * @param ending how it ended
 * @param seconds how long it took
 * @param series from the start to the end, both included
 * @param peakBottleGas highest temperature of the gas in the bottle
 * @param lowestSupplyGas lowest temperature of the gas in the source
 * @param balance the books
 */
public record WarmFill(
        WarmState bottle,
        WarmSource source,
        Hose hose,
        WarmEnding ending,
        double seconds,
        List<WarmPoint> series,
        Temperature peakBottleGas,
        Temperature lowestSupplyGas,
        Balance balance) {

    public WarmFill {
        series = List.copyOf(series);
    }
}
