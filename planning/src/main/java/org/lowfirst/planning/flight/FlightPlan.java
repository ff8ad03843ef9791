package org.lowfirst.planning.flight;

import java.util.List;
import java.util.Optional;
import org.lowfirst.gas.GaugePressure;

/**
 * The oxygen of a flight. Litres are free gas at the request's reference condition.
 *
 * @param legs use by leg, in the order flown; legs of one name that follow each other are one
 * @param occupants use by occupant, in the order given
 * @param usedLitres what the flight uses as planned
 * @param marginLitres what the margin adds
 * @param reserveLitres what the reserve adds
 * @param usableLitres what the bottles give down to their keep pressures
 * @param bottles what each bottle gives, in the order given
 * @param pressureNeeded the common reading at which these bottles would just cover flight, margin and reserve
 * @param reserveTouched when the reserve is touched, flying as planned [s after the start]; empty if it is not
 * @param emptied when the keep pressures are reached [s]; empty if they are not
 * @param turn last moment [s] to start down so that the reserve is not touched; empty if the whole flight allows it
 * @param highestFlowMinutes time the usable gas lasts at the highest flow of the flight; empty if nothing flows
 * @param needs what the rule texts ask
 * @param gaps occupants whose device is off while a rule asks them to use oxygen
 */
public record FlightPlan(
        List<Use> legs,
        List<Use> occupants,
        double usedLitres,
        double marginLitres,
        double reserveLitres,
        double usableLitres,
        List<Use> bottles,
        Optional<Pressure> pressureNeeded,
        Optional<Double> reserveTouched,
        Optional<Double> emptied,
        Optional<Double> turn,
        Optional<Double> highestFlowMinutes,
        List<Need> needs,
        List<Gap> gaps) {

    /** Litres of somebody or something. */
    public record Use(String name, double litres) {}

    /**
     * A common reading for all bottles.
     *
     * @param withinService false where it is above the lowest marked service pressure, so more bottles are needed
     */
    public record Pressure(GaugePressure reading, boolean withinService) {}

    /** An occupant without oxygen in a span in which {@code rule} asks for it. */
    public record Gap(String occupant, OxygenRule rule, Span span) {}

    public FlightPlan {
        legs = List.copyOf(legs);
        occupants = List.copyOf(occupants);
        bottles = List.copyOf(bottles);
        needs = List.copyOf(needs);
        gaps = List.copyOf(gaps);
    }

    /** What must be in the bottles above their keep pressures. */
    public double neededLitres() {
        return usedLitres + marginLitres + reserveLitres;
    }

    /** Whether the bottles hold what flight, margin and reserve need. */
    public boolean covered() {
        return usableLitres >= neededLitres();
    }

    /** What is missing; 0 when covered. */
    public double shortLitres() {
        return Math.max(0.0, neededLitres() - usableLitres);
    }
}
