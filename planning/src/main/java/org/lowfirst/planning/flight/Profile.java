package org.lowfirst.planning.flight;

import java.time.Duration;
import java.util.List;

/** The altitude of a flight against time: legs without gaps, checked by {@link #of}. */
public final class Profile {

    private static final Altitude LOWEST = new Altitude(-500.0);
    private static final Altitude HIGHEST = new Altitude(20_000.0);
    private static final Duration LONGEST = Duration.ofHours(24);
    /** Faster than any light aircraft climbs or dives for long: a metre and a foot were mixed up. */
    private static final double STEEPEST_M_PER_S = 75.0;

    private static final double TOUCHING_M = 1.0;

    private final List<Leg> legs;

    private Profile(List<Leg> legs) {
        this.legs = legs;
    }

    /** What came of checking a profile. */
    public sealed interface Outcome {}

    /** The profile holds together. */
    public record Checked(Profile profile) implements Outcome {}

    /**
     * The profile contradicts itself.
     *
     * @param leg index of the leg, from 0
     */
    public record Refused(Problem problem, int leg, double measured, double limit, String unit) implements Outcome {}

    /** What may be wrong with a profile. */
    public enum Problem {
        NO_LEGS,
        DURATION_NOT_ABOVE_ZERO,
        FLIGHT_TOO_LONG,
        ALTITUDE_OUT_OF_RANGE,
        LEGS_DO_NOT_MEET,
        TOO_STEEP
    }

    /**
     * Checks the legs and joins them.
     *
     * @param legs in the order flown
     */
    public static Outcome of(List<Leg> legs) {
        if (legs.isEmpty()) {
            return new Refused(Problem.NO_LEGS, 0, 0, 1, "legs");
        }
        Duration total = Duration.ZERO;
        for (int i = 0; i < legs.size(); i++) {
            Leg leg = legs.get(i);
            if (leg.duration().isNegative() || leg.duration().isZero()) {
                return new Refused(Problem.DURATION_NOT_ABOVE_ZERO, i, leg.seconds() / 60, 0, "min");
            }
            total = total.plus(leg.duration());
            for (Altitude end : List.of(leg.from(), leg.to())) {
                if (end.compareTo(LOWEST) < 0) {
                    return new Refused(Problem.ALTITUDE_OUT_OF_RANGE, i, end.toFeet(), LOWEST.toFeet(), "ft");
                }
                if (end.compareTo(HIGHEST) > 0) {
                    return new Refused(Problem.ALTITUDE_OUT_OF_RANGE, i, end.toFeet(), HIGHEST.toFeet(), "ft");
                }
            }
            if (i > 0 && Math.abs(leg.from().metres() - legs.get(i - 1).to().metres()) > TOUCHING_M) {
                return new Refused(
                        Problem.LEGS_DO_NOT_MEET,
                        i,
                        leg.from().toFeet(),
                        legs.get(i - 1).to().toFeet(),
                        "ft");
            }
            if (Math.abs(leg.climb_mPerS()) > STEEPEST_M_PER_S) {
                return new Refused(
                        Problem.TOO_STEEP,
                        i,
                        Math.abs(leg.climb_mPerS()) * 60 / 0.3048,
                        STEEPEST_M_PER_S * 60 / 0.3048,
                        "ft/min");
            }
        }
        if (total.compareTo(LONGEST) > 0) {
            return new Refused(
                    Problem.FLIGHT_TOO_LONG, legs.size() - 1, total.toMinutes() / 60.0, LONGEST.toHours(), "h");
        }
        return new Checked(new Profile(List.copyOf(legs)));
    }

    public List<Leg> legs() {
        return legs;
    }

    public Duration duration() {
        return legs.stream().map(Leg::duration).reduce(Duration.ZERO, Duration::plus);
    }

    public Altitude highest() {
        return legs.stream()
                .flatMap(leg -> List.of(leg.from(), leg.to()).stream())
                .max(Altitude::compareTo)
                .orElseThrow();
    }
}
