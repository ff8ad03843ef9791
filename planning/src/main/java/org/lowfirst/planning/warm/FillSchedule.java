package org.lowfirst.planning.warm;

import java.util.List;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;

/**
 * A fill on a clock.
 *
 * @param request what was asked
 * @param legs its stretches in order
 * @param total_s how long it takes [s]
 * @param lastReading what the bottle's gauge shows at the end, warm
 * @param settled what the bottle settles to
 * @param percentOfWanted contents as part of what it may or shall get [%]
 * @param complete whether it got as much as it may or shall get, or its gauge came to the stop
 * @param peakBottleGas highest temperature of the gas in the bottle
 * @param lowestSupplyGas lowest temperature of the gas in a supply
 * @param bankAfter what each supply settles to, in the order of the request
 * @param vented gas that goes to the surroundings with the hose
 * @param series for a picture, from start to end
 * @param cautions to be shown with it
 */
public record FillSchedule(
        FillInTimeRequest request,
        List<Leg> legs,
        double total_s,
        GaugePressure lastReading,
        SettledBottle settled,
        double percentOfWanted,
        boolean complete,
        Temperature peakBottleGas,
        Temperature lowestSupplyGas,
        List<SupplyAfter> bankAfter,
        Amount vented,
        List<SchedulePoint> series,
        List<Caution> cautions) {

    public FillSchedule {
        legs = List.copyOf(legs);
        bankAfter = List.copyOf(bankAfter);
        series = List.copyOf(series);
        cautions = List.copyOf(cautions);
    }

    /** A supply and what it settles to. */
    public record SupplyAfter(String name, GaugePressure settled) {}

    public double totalMinutes() {
        return total_s / 60.0;
    }
}
