package org.lowfirst.planning.warm;

import java.util.List;
import java.util.OptionalDouble;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.transfer.warm.Settling;

/**
 * Where to stop, and what comes of it.
 *
 * @param request what was asked
 * @param now how the bottle is
 * @param stop where to shut the valve
 * @param ifShutNow what the bottle settles to when the valve is shut now
 * @param ifShutAtStop what it settles to when the valve is shut at the stop
 * @param settling how it settles when the valve is shut now, with the wait until it counts as settled
 * @param topUp what is then missing
 * @param cautions to be shown with it
 */
public record StopPlan(
        StopRequest request,
        Now now,
        StopAt stop,
        SettledBottle ifShutNow,
        SettledBottle ifShutAtStop,
        Settling settling,
        TopUp topUp,
        List<Caution> cautions) {

    public StopPlan {
        cautions = List.copyOf(cautions);
    }

    /**
     * @param reading what the gauge shows
     * @param gas temperature of the gas
     * @param wall temperature of the wall
     * @param gasComputed whether the gas temperature was computed from the readings
     * @param wallAssumed whether the wall is taken to be as warm as the gas
     */
    public record Now(
            GaugePressure reading, Temperature gas, Temperature wall, boolean gasComputed, boolean wallAssumed) {}

    /**
     * @param reading what the gauge shows when the valve is to be shut
     * @param why what decides it
     * @param gas temperature of the gas then
     * @param full what a full bottle reads, settled at the bench's temperature
     * @param developed what the bottle would come to when hot, and the limit
     */
    public record StopAt(
            GaugePressure reading, StopReason why, Temperature gas, GaugePressure full, DevelopedPressure developed) {}

    /** Whether the gauge is at or beyond the stop. */
    public boolean shutNow() {
        return now.reading().compareTo(stop.reading()) >= 0;
    }

    /** From now until the gauge counts as settled [s]; empty when that takes longer than is followed. */
    public OptionalDouble wait_s() {
        return settling.wait_s();
    }
}
