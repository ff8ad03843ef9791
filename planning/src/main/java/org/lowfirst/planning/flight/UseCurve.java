package org.lowfirst.planning.flight;

import java.util.ArrayList;
import java.util.List;

/** Free gas one occupant has used at each moment of a profile; flow is linear within each piece, so the sum is exact. */
final class UseCurve {

    /** One piece: flow [L/s] from {@code flow0} to {@code flow1} over {@code t0..t1} [s]. */
    private record Piece(double t0, double t1, double flow0, double flow1) {

        double litresUntil(double t_s) {
            double span_s = Math.min(t_s, t1) - t0;
            if (span_s <= 0.0) {
                return 0.0;
            }
            double flowAt = flow0 + (flow1 - flow0) * span_s / (t1 - t0);
            return 0.5 * (flow0 + flowAt) * span_s;
        }
    }

    private final List<Piece> pieces;
    /** Litres used before each piece begins, and after the last. */
    private final double[] before;

    private UseCurve(List<Piece> pieces) {
        this.pieces = pieces;
        this.before = new double[pieces.size() + 1];
        for (int i = 0; i < pieces.size(); i++) {
            before[i + 1] = before[i] + pieces.get(i).litresUntil(pieces.get(i).t1);
        }
    }

    static UseCurve of(List<Leg> legs, Occupant occupant) {
        List<Piece> pieces = new ArrayList<>();
        double start_s = 0.0;
        for (Leg leg : legs) {
            addLeg(pieces, leg, start_s, occupant);
            start_s += leg.seconds();
        }
        return new UseCurve(List.copyOf(pieces));
    }

    private static void addLeg(List<Piece> pieces, Leg leg, double start_s, Occupant occupant) {
        double[] cuts = cuts(leg, occupant.from().metres());
        for (int i = 1; i < cuts.length; i++) {
            double middle_m = leg.metresAt(0.5 * (cuts[i - 1] + cuts[i]));
            if (cuts[i] > cuts[i - 1] && middle_m >= occupant.from().metres()) {
                pieces.add(new Piece(
                        start_s + cuts[i - 1] * leg.seconds(),
                        start_s + cuts[i] * leg.seconds(),
                        occupant.flow().litresPerMinuteAt(leg.metresAt(cuts[i - 1])) / 60.0,
                        occupant.flow().litresPerMinuteAt(leg.metresAt(cuts[i])) / 60.0));
            }
        }
    }

    /** Fractions of the leg, ascending, between which the flow is linear: its ends, where use begins, and sea level. */
    private static double[] cuts(Leg leg, double use_m) {
        double atUse = fractionAt(leg, use_m);
        double atSea = fractionAt(leg, 0.0);
        return new double[] {0.0, Math.min(atUse, atSea), Math.max(atUse, atSea), 1.0};
    }

    private static double fractionAt(Leg leg, double metres) {
        double rise_m = leg.to().metres() - leg.from().metres();
        if (rise_m == 0.0) {
            return 0.0;
        }
        return Math.max(0.0, Math.min(1.0, (metres - leg.from().metres()) / rise_m));
    }

    /** Free gas used [L] from the start until {@code t_s} [s]. */
    double litresUntil(double t_s) {
        int begun = begunBy(t_s);
        return begun == 0 ? 0.0 : before[begun - 1] + pieces.get(begun - 1).litresUntil(t_s);
    }

    /** How many pieces begin at {@code t_s} or before; they are in order and do not overlap. */
    private int begunBy(double t_s) {
        int low = 0;
        int high = pieces.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (pieces.get(middle).t0 <= t_s) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    double litresBetween(double from_s, double to_s) {
        return litresUntil(to_s) - litresUntil(from_s);
    }

    /** Flow [L/s] at {@code t_s}; at a jump the larger of the two. */
    double flowAt(double t_s) {
        double most = 0.0;
        for (int i = begunBy(t_s) - 1; i >= 0 && pieces.get(i).t1 >= t_s; i--) {
            Piece piece = pieces.get(i);
            double share = (t_s - piece.t0) / (piece.t1 - piece.t0);
            most = Math.max(most, piece.flow0 + share * (piece.flow1 - piece.flow0));
        }
        return most;
    }

    /** Moments [s] at which the flow may jump or turn. */
    List<Double> corners() {
        return pieces.stream().flatMap(p -> List.of(p.t0, p.t1).stream()).toList();
    }
}
