package org.lowfirst.planning.warm;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;

/**
 * One bottle, one bank, a clock.
 *
 * @param bank the supplies in any order, settled
 * @param bottle the bottle
 * @param reading its settled gauge reading at the bench's temperature
 * @param target settled gauge reading wanted at the bench's temperature; null for as full as the marking allows
 * @param bench temperature, rule set, model
 * @param compensation whether the gauge may go beyond the service pressure while the gas is warm
 * @param hose volume between supply valves and transfer valve, 0 to leave it out of account
 * @param pace how the fill is worked
 */
public record FillInTimeRequest(
        List<TimedSupply> bank,
        RatedBottle bottle,
        GaugePressure reading,
        @Nullable GaugePressure target,
        WarmBench bench,
        Compensation compensation,
        Volume hose,
        Pace pace) {

    public FillInTimeRequest {
        bank = List.copyOf(bank);
    }

    /** As full as the marking allows, without compensation, the hose left out of account. */
    public FillInTimeRequest(
            List<TimedSupply> bank, RatedBottle bottle, GaugePressure reading, WarmBench bench, Pace pace) {
        this(bank, bottle, reading, null, bench, Compensation.OFF, new Volume(0.0), pace);
    }

    public FillInTimeRequest with(Pace other) {
        return new FillInTimeRequest(bank, bottle, reading, target, bench, compensation, hose, other);
    }

    public FillInTimeRequest with(Compensation other) {
        return new FillInTimeRequest(bank, bottle, reading, target, bench, other, hose, pace);
    }

    public FillInTimeRequest withTarget(GaugePressure wanted) {
        return new FillInTimeRequest(bank, bottle, reading, wanted, bench, compensation, hose, pace);
    }

    public FillInTimeRequest withHose(Volume volume) {
        return new FillInTimeRequest(bank, bottle, reading, target, bench, compensation, volume, pace);
    }
}
