package org.lowfirst.planning.flight;

import java.time.Duration;
import java.util.List;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.Temperature;

/**
 * What a flight asks of the bottles on board.
 *
 * @param litres reference condition of every flow and volume of free gas
 * @param temperature temperature of the bottles
 * @param reserve time at the highest flow of the flight that is to be left at its end
 * @param marginPercent added to what the flight uses, at least 0
 * @param descent_mPerS rate of the way down from any moment of the flight, above 0
 */
public record FlightRequest(
        Profile profile,
        List<Occupant> occupants,
        List<OxygenRule> rules,
        List<BottleOnBoard> bottles,
        ReferenceCondition litres,
        Temperature temperature,
        Duration reserve,
        double marginPercent,
        double descent_mPerS) {

    public FlightRequest {
        occupants = List.copyOf(occupants);
        rules = List.copyOf(rules);
        bottles = List.copyOf(bottles);
    }
}
