package org.lowfirst.planning.contents;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Signatures of one kind that differ in when they began, oldest first. */
final class SignatureFamily {

    private final List<Signature> members = new ArrayList<>();
    private final int most;

    /**
     * @param most how many are kept; the oldest is given up first
     */
    SignatureFamily(int most) {
        this.most = most;
    }

    Signature begin(int since) {
        if (members.size() == most) {
            members.remove(0);
        }
        Signature begun = new Signature(since);
        members.add(begun);
        return begun;
    }

    List<Signature> members() {
        return members;
    }

    void read(double innovation, double variance, double gain) {
        for (Signature member : members) {
            member.read(innovation, variance, gain);
        }
        for (int i = 0; i + 1 < members.size(); i++) {
            members.get(i).share(members.get(i + 1), variance);
        }
    }

    void restart() {
        members.forEach(Signature::restart);
    }

    /** The member with the largest size over its standard deviation, of positive size; null when there is none. */
    @Nullable
    Signature strongestPositive() {
        return strongest(1.0);
    }

    @Nullable
    Signature strongestNegative() {
        return strongest(-1.0);
    }

    private @Nullable Signature strongest(double sign) {
        Signature best = null;
        for (Signature member : members) {
            if (sign * member.score() > 0.0 && (best == null || sign * member.z() > sign * best.z())) {
                best = member;
            }
        }
        return best;
    }

    /**
     * Upper bound of the chance that noise alone gives any member of this family a z above the one given, one side.
     *
     * <p>One tail for the first member, and for each next one the smaller of a tail and the expected crossings on the arc from
     * its neighbour, angle / (2 pi) exp(-z z / 2) (Davies 1977, from memory; docs/estimates.md has the proof and the check).
     */
    double chanceAbove(double z) {
        double tail = Gaussian.above(z);
        double crossings = Math.exp(-0.5 * z * z) / (2.0 * Math.PI);
        double chance = 0.0;
        int previous = -1;
        for (int i = 0; i < members.size(); i++) {
            if (!(members.get(i).information() > 0.0)) {
                continue;
            }
            boolean neighbours = previous >= 0 && previous == i - 1;
            chance += neighbours ? Math.min(tail, angle(members.get(previous), members.get(i)) * crossings) : tail;
            previous = i;
        }
        return Math.min(1.0, chance);
    }

    private static double angle(Signature one, Signature next) {
        double cosine = one.shared() / Math.sqrt(one.information() * next.information());
        return Math.acos(Math.max(-1.0, Math.min(1.0, cosine)));
    }
}
