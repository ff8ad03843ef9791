package org.lowfirst.planning.flight;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.Evaluated;
import org.lowfirst.gas.Isotherm;
import org.lowfirst.gas.StandardAtmosphere;

/** Works out what a flight needs and what the bottles on board give. */
public final class PlanningAFlight {

    private PlanningAFlight() {}

    /**
     * Plans the oxygen of a flight.
     *
     * @param equation the gas in the bottles
     */
    public static FlightOutcome plan(FlightRequest request, EquationOfState equation) {
        Optional<FlightOutcome.Refused> refused = RequestCheck.firstProblem(request);
        if (refused.isPresent()) {
            return refused.get();
        }
        Evaluated<Isotherm> line = equation.isotherm(request.temperature());
        if (line instanceof Evaluated.OutOfRange<Isotherm> out) {
            return new FlightOutcome.Refused(
                    FlightOutcome.Problem.TEMPERATURE_OUT_OF_RANGE,
                    "",
                    out.measured(),
                    out.measured() < out.lowest() ? out.lowest() : out.highest(),
                    "K");
        }
        Isotherm isotherm = line.orElseThrow();
        double highest_Pa = isotherm.highestPressure_Pa() - StandardAtmosphere.PRESSURE.pascals();
        for (BottleOnBoard bottle : request.bottles()) {
            double measured_Pa =
                    Math.max(bottle.reading().pascals(), bottle.keep().pascals());
            if (measured_Pa > highest_Pa) {
                return new FlightOutcome.Refused(
                        FlightOutcome.Problem.PRESSURE_OUT_OF_RANGE,
                        bottle.name(),
                        measured_Pa,
                        highest_Pa,
                        "Pa gauge");
            }
        }
        return new FlightOutcome.Planned(plan(request, new BottleGas(equation, isotherm, request)));
    }

    private static FlightPlan plan(FlightRequest request, BottleGas gas) {
        FlightUse use = new FlightUse(request.profile(), request.occupants());
        double used = use.litres();
        double margin = used * request.marginPercent() / 100.0;
        double reserve = use.highestFlow() * request.reserve().toSeconds();
        List<FlightPlan.Use> bottles = request.bottles().stream()
                .map(bottle -> new FlightPlan.Use(bottle.name(), gas.usableLitres(bottle)))
                .toList();
        double usable = bottles.stream().mapToDouble(FlightPlan.Use::litres).sum();
        double beforeReserve = usable - reserve;
        List<Need> needs = ReadingTheRules.of(request.rules(), request.profile());
        return new FlightPlan(
                use.byLeg(),
                use.byOccupant(),
                used,
                margin,
                reserve,
                usable,
                bottles,
                gas.readingFor(used + margin + reserve, request.bottles()),
                use.whenUsed(beforeReserve),
                use.whenUsed(usable),
                use.whenWayDownTakes(beforeReserve, request.descent_mPerS()),
                use.highestFlow() > 0.0 ? Optional.of(usable / use.highestFlow() / 60.0) : Optional.empty(),
                needs,
                gaps(request, needs));
    }

    private static List<FlightPlan.Gap> gaps(FlightRequest request, List<Need> needs) {
        List<FlightPlan.Gap> gaps = new ArrayList<>();
        for (Need need : needs) {
            if (need.rule().duty() != OxygenRule.Duty.USE) {
                continue;
            }
            for (Occupant who : request.occupants()) {
                if (who.role() == need.rule().role()) {
                    addGaps(gaps, who, need, request.profile());
                }
            }
        }
        return gaps;
    }

    /** Where a rule asks for oxygen below the altitude from which the device is on, or of somebody whose device gives none. */
    private static void addGaps(List<FlightPlan.Gap> gaps, Occupant who, Need need, Profile profile) {
        boolean flows = who.flow().litresPerMinuteAt(need.rule().above().metres()) > 0.0;
        List<Span> off = AltitudeBand.spans(
                profile, need.rule().above().metres(), flows ? who.from().metres() : Double.POSITIVE_INFINITY);
        for (Span asked : need.spans()) {
            for (Span without : off) {
                double from_s = Math.max(asked.fromSeconds(), without.fromSeconds());
                double to_s = Math.min(asked.toSeconds(), without.toSeconds());
                if (to_s > from_s && (!flows || who.from().compareTo(need.rule().above()) > 0)) {
                    gaps.add(new FlightPlan.Gap(who.name(), need.rule(), new Span(from_s, to_s)));
                }
            }
        }
    }

    /** What is plainly wrong with a request before any gas is looked at. */
    private static final class RequestCheck {

        private static final double STEEPEST_DESCENT_M_PER_S = 75.0;

        static Optional<FlightOutcome.Refused> firstProblem(FlightRequest request) {
            List<Optional<FlightOutcome.Refused>> checks = List.of(
                    when(request.occupants().isEmpty(), FlightOutcome.Problem.NO_OCCUPANTS, "", 0, 1, "people"),
                    when(
                            !(request.marginPercent() >= 0.0),
                            FlightOutcome.Problem.MARGIN_BELOW_ZERO,
                            "",
                            request.marginPercent(),
                            0,
                            "%"),
                    when(
                            request.reserve().isNegative(),
                            FlightOutcome.Problem.RESERVE_BELOW_ZERO,
                            "",
                            request.reserve().toSeconds() / 60.0,
                            0,
                            "min"),
                    when(
                            !(request.descent_mPerS() > 0.0 && request.descent_mPerS() <= STEEPEST_DESCENT_M_PER_S),
                            FlightOutcome.Problem.DESCENT_NOT_ABOVE_ZERO,
                            "",
                            request.descent_mPerS(),
                            0,
                            "m/s"),
                    duplicate(request),
                    bottleProblem(request));
            return checks.stream().flatMap(Optional::stream).findFirst();
        }

        private static Optional<FlightOutcome.Refused> when(
                boolean broken,
                FlightOutcome.Problem problem,
                String subject,
                double measured,
                double limit,
                String unit) {
            return broken
                    ? Optional.of(new FlightOutcome.Refused(problem, subject, measured, limit, unit))
                    : Optional.empty();
        }

        private static Optional<FlightOutcome.Refused> duplicate(FlightRequest request) {
            Set<String> names = new HashSet<>();
            for (Occupant who : request.occupants()) {
                if (!names.add(who.name())) {
                    return Optional.of(new FlightOutcome.Refused(
                            FlightOutcome.Problem.DUPLICATE_NAME, who.name(), 2, 1, "people"));
                }
            }
            names.clear();
            for (BottleOnBoard bottle : request.bottles()) {
                if (!names.add(bottle.name())) {
                    return Optional.of(new FlightOutcome.Refused(
                            FlightOutcome.Problem.DUPLICATE_NAME, bottle.name(), 2, 1, "bottles"));
                }
            }
            return Optional.empty();
        }

        private static Optional<FlightOutcome.Refused> bottleProblem(FlightRequest request) {
            return request.bottles().stream()
                    .map(RequestCheck::bottleProblem)
                    .flatMap(Optional::stream)
                    .findFirst();
        }

        private static Optional<FlightOutcome.Refused> bottleProblem(BottleOnBoard bottle) {
            double reading_Pa = bottle.reading().pascals();
            if (reading_Pa < 0.0) {
                return when(true, FlightOutcome.Problem.READING_BELOW_ZERO, bottle.name(), reading_Pa, 0, "Pa gauge");
            }
            if (bottle.keep().pascals() < 0.0) {
                return when(
                        true,
                        FlightOutcome.Problem.KEEP_BELOW_ZERO,
                        bottle.name(),
                        bottle.keep().pascals(),
                        0,
                        "Pa gauge");
            }
            return when(
                    reading_Pa > bottle.servicePressure().pascals() * 1.25,
                    FlightOutcome.Problem.READING_ABOVE_SERVICE_PRESSURE,
                    bottle.name(),
                    reading_Pa,
                    bottle.servicePressure().pascals(),
                    "Pa gauge");
        }
    }
}
