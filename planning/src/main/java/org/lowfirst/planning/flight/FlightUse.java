package org.lowfirst.planning.flight;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/** What all occupants together use over a profile, and when a limit is passed. */
final class FlightUse {

    private static final double STEP_S = 10.0;
    private static final double PRECISION_S = 0.01;

    private final Profile profile;
    private final List<UseCurve> curves;
    private final List<Occupant> occupants;
    private final double end_s;

    FlightUse(Profile profile, List<Occupant> occupants) {
        this.profile = profile;
        this.occupants = occupants;
        this.curves =
                occupants.stream().map(who -> UseCurve.of(profile.legs(), who)).toList();
        this.end_s = profile.legs().stream().mapToDouble(Leg::seconds).sum();
    }

    double litres() {
        return litresUntil(end_s);
    }

    double litresUntil(double t_s) {
        return curves.stream().mapToDouble(curve -> curve.litresUntil(t_s)).sum();
    }

    /** Highest total flow of the flight [L/s]. */
    double highestFlow() {
        return curves.stream()
                .flatMap(curve -> curve.corners().stream())
                .mapToDouble(corner -> curves.stream()
                        .mapToDouble(curve -> curve.flowAt(corner))
                        .sum())
                .max()
                .orElse(0.0);
    }

    List<FlightPlan.Use> byOccupant() {
        List<FlightPlan.Use> uses = new ArrayList<>();
        for (int i = 0; i < curves.size(); i++) {
            uses.add(new FlightPlan.Use(occupants.get(i).name(), curves.get(i).litresUntil(end_s)));
        }
        return uses;
    }

    List<FlightPlan.Use> byLeg() {
        List<FlightPlan.Use> uses = new ArrayList<>();
        double start_s = 0.0;
        for (Leg leg : profile.legs()) {
            double stop_s = start_s + leg.seconds();
            double litres = litresUntil(stop_s) - litresUntil(start_s);
            int last = uses.size() - 1;
            if (last >= 0 && uses.get(last).name().equals(leg.name())) {
                uses.set(last, new FlightPlan.Use(leg.name(), uses.get(last).litres() + litres));
            } else {
                uses.add(new FlightPlan.Use(leg.name(), litres));
            }
            start_s = stop_s;
        }
        return uses;
    }

    /** First moment [s] at which the use passes {@code litres}. */
    Optional<Double> whenUsed(double litres) {
        return firstAbove(this::litresUntil, litres);
    }

    /** First moment [s] at which the use so far and the way down from there pass {@code litres}. */
    Optional<Double> whenWayDownTakes(double litres, double descent_mPerS) {
        return firstAbove(t_s -> litresUntil(t_s) + wayDown(t_s, descent_mPerS), litres);
    }

    private Optional<Double> firstAbove(DoubleUnaryOperator litresAt, double limit) {
        double before_s = 0.0;
        for (double t_s = 0.0; ; t_s = Math.min(end_s, t_s + STEP_S)) {
            if (litresAt.applyAsDouble(t_s) > limit) {
                return Optional.of(bisect(litresAt, limit, before_s, t_s));
            }
            if (t_s >= end_s) {
                return Optional.empty();
            }
            before_s = t_s;
        }
    }

    private static double bisect(DoubleUnaryOperator litresAt, double limit, double low_s, double high_s) {
        double within_s = low_s;
        double beyond_s = high_s;
        while (beyond_s - within_s > PRECISION_S) {
            double middle_s = 0.5 * (within_s + beyond_s);
            if (litresAt.applyAsDouble(middle_s) > limit) {
                beyond_s = middle_s;
            } else {
                within_s = middle_s;
            }
        }
        return within_s;
    }

    /** Use [L] of a straight descent to sea level from where the profile is at {@code t_s}. */
    private double wayDown(double t_s, double descent_mPerS) {
        double from_m = altitude_m(t_s);
        if (from_m <= 0.0) {
            return 0.0;
        }
        double seconds = from_m / descent_mPerS;
        Leg down = new Leg("down", Duration.ofNanos((long) (seconds * 1e9)), new Altitude(from_m), new Altitude(0.0));
        return occupants.stream()
                .mapToDouble(who -> UseCurve.of(List.of(down), who).litresUntil(down.seconds()))
                .sum();
    }

    private double altitude_m(double t_s) {
        double start_s = 0.0;
        for (Leg leg : profile.legs()) {
            if (t_s <= start_s + leg.seconds()) {
                return leg.metresAt((t_s - start_s) / leg.seconds());
            }
            start_s += leg.seconds();
        }
        return profile.legs().get(profile.legs().size() - 1).to().metres();
    }
}
