package org.lowfirst.planning.session;

/**
 * A session as the kernel sees it: SI doubles, the supplies that may be opened in their order of use. Not changed once made.
 *
 * <p>Symbols: V volume [m3], r molar density in a supply [mol/m3], q molar density in a bottle [mol/m3], loss the gas above the
 * highest stop that a plan uses up [mol]. At one temperature equal pressure is equal density (see
 * {@link org.lowfirst.transfer.Stage}), so no equation of state is evaluated here.
 *
 * <p>A hose counts as purged before and vented after every stage, which asks a little more gas than a bench that leaves it
 * connected; so what is planned can be done.
 */
final class Problem {

    /** Relative slack when a bottle is compared with its stop. */
    static final double SLACK = 1e-12;

    final int supplies;
    final int bottles;
    final double[] supply_m3;
    final double[] supply_molPerM3;
    final double[] bottle_m3;
    final double[] bottle_molPerM3;
    /** Density of each bottle at its wish. */
    final double[] wish_molPerM3;
    /** Density with which each bottle counts as ready, at most its wish. */
    final double[] floor_molPerM3;
    /** 1 = most important. */
    final int[] priority;

    /** So many supplies at the beginning are used first: their gas is meant to go and is not counted as left. */
    final int usedFirst;

    private final double hose_m3;
    private final double purged_molPerM3;
    /** Highest wish: gas above it can still finish any bottle. */
    final double top_molPerM3;

    Problem(Vessels supplies, Vessels bottles, double[] wish, double[] floor, int[] priority, Vessels hose) {
        this(supplies, bottles, wish, floor, priority, hose, 0);
    }

    private Problem(
            Vessels supplies,
            Vessels bottles,
            double[] wish,
            double[] floor,
            int[] priority,
            Vessels hose,
            int usedFirst) {
        this.usedFirst = usedFirst;
        this.supplies = supplies.count();
        this.bottles = bottles.count();
        supply_m3 = supplies.volume();
        supply_molPerM3 = supplies.density();
        bottle_m3 = bottles.volume();
        bottle_molPerM3 = bottles.density();
        wish_molPerM3 = wish.clone();
        floor_molPerM3 = floor.clone();
        this.priority = priority.clone();
        hose_m3 = hose.volume()[0];
        purged_molPerM3 = hose.density()[0];
        double top = 0.0;
        for (double one : wish) {
            top = Math.max(top, one);
        }
        top_molPerM3 = top;
    }

    /** Volumes and densities of several vessels, copied on the way in and out. */
    static final class Vessels {
        private final double[] volume_m3;
        private final double[] density_molPerM3;

        Vessels(double[] volume_m3, double[] density_molPerM3) {
            this.volume_m3 = volume_m3.clone();
            this.density_molPerM3 = density_molPerM3.clone();
        }

        int count() {
            return volume_m3.length;
        }

        double[] volume() {
            return volume_m3.clone();
        }

        double[] density() {
            return density_molPerM3.clone();
        }
    }

    /** The same bank and bottles with no bottle wanted above {@code most}. */
    Problem wantingAtMost(double most_molPerM3) {
        double[] lower = new double[bottles];
        for (int b = 0; b < bottles; b++) {
            lower[b] = Math.min(floor_molPerM3[b], most_molPerM3);
        }
        return with(supply_m3, supply_molPerM3, lower, lower);
    }

    /** The same bottles on another bank. */
    Problem onBank(double[] volume_m3, double[] density_molPerM3) {
        return with(volume_m3, density_molPerM3, wish_molPerM3, floor_molPerM3);
    }

    /** The same with so many supplies at the beginning used first. */
    Problem usingFirst(int supplies) {
        return new Problem(
                new Vessels(supply_m3, supply_molPerM3),
                new Vessels(bottle_m3, bottle_molPerM3),
                wish_molPerM3,
                floor_molPerM3,
                priority,
                new Vessels(new double[] {hose_m3}, new double[] {purged_molPerM3}),
                supplies);
    }

    private Problem with(double[] volume_m3, double[] density_molPerM3, double[] wish, double[] floor) {
        return new Problem(
                new Vessels(volume_m3, density_molPerM3),
                new Vessels(bottle_m3, bottle_molPerM3),
                wish,
                floor,
                priority,
                new Vessels(new double[] {hose_m3}, new double[] {purged_molPerM3}),
                usedFirst);
    }

    /** Whether gas is lost with a hose. */
    boolean hasHose() {
        return hose_m3 > 0.0;
    }

    /** Gas that bottles still need to come to their stops [mol]. */
    double need_mol(double[] q, double[] stop) {
        double sum = 0.0;
        for (int b = 0; b < bottles; b++) {
            sum += at(q[b], stop[b]) ? 0.0 : bottle_m3[b] * (stop[b] - q[b]);
        }
        return sum;
    }

    /** Whether a bottle at density q has come to its stop; a stop that is not a number asks for nothing. */
    static boolean at(double q, double stop) {
        return !(q < stop * (1.0 - SLACK));
    }

    /** Whether supply s, after filling the hose, is above density q. */
    boolean gives(double r, int s, double q) {
        return (supply_m3[s] * r + hose_m3 * purged_molPerM3) / (supply_m3[s] + hose_m3) > q * (1.0 + SLACK);
    }

    /** Density at which supply s and bottle b come to rest. */
    double equal(int s, double r, int b, double q) {
        return (supply_m3[s] * r + hose_m3 * purged_molPerM3 + bottle_m3[b] * q)
                / (supply_m3[s] + hose_m3 + bottle_m3[b]);
    }

    /** Density left in supply s after giving {@code gain} [mol] through the hose. */
    double rest(int s, double r, double gain) {
        return (supply_m3[s] * r + hose_m3 * purged_molPerM3 - gain) / (supply_m3[s] + hose_m3);
    }

    /** Opens supply s to bottle b; changes r[s] and q[b]. */
    void stage(double[] r, double[] q, int s, int b, double stop) {
        double after = Math.min(equal(s, r[s], b, q[b]), stop);
        r[s] = rest(s, r[s], bottle_m3[b] * (after - q[b]));
        q[b] = after;
    }

    /** Gas above the highest stop [mol]. */
    double usable_mol(double[] r) {
        double sum = 0.0;
        for (int s = 0; s < supplies; s++) {
            sum += usable_mol(s, r[s]);
        }
        return sum;
    }

    /** Gas above the highest stop in supply s at density r [mol]; none in one that is used first. */
    double usable_mol(int s, double r) {
        return s < usedFirst ? 0.0 : supply_m3[s] * Math.max(0.0, r - top_molPerM3);
    }
}
