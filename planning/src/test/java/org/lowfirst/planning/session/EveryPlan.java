package org.lowfirst.planning.session;

/**
 * Tries every plan of a small session: any bottle on any supply in any order, each stage to equal pressure or to the bottle's
 * stop, going back to lower supplies included. Ideal gas in bar and litres; written apart from the planner.
 */
final class EveryPlan {

    private final double[] supply_L;
    private final double[] bottle_L;
    private final double[] stop_bar;
    private final double top_bar;
    private final int[] steps = new int[64];

    private int first = -1;
    private int ready = -1;
    private double gasLeft_barL;

    EveryPlan(double[] supply_L, double[] bottle_L, double[] stop_bar) {
        this.supply_L = supply_L.clone();
        this.bottle_L = bottle_L.clone();
        this.stop_bar = stop_bar.clone();
        double top = 0;
        for (double stop : stop_bar) {
            top = Math.max(top, stop);
        }
        top_bar = top;
    }

    static EveryPlan of(SessionRequest request) {
        return following(request, -1);
    }

    /** Only plans in which every bottle that a supply can give to is on it before any other; its gas is not counted as left. */
    static EveryPlan usingFirst(SessionRequest request, int first) {
        return following(request, first);
    }

    private static EveryPlan following(SessionRequest request, int first) {
        double ambient = 1.01325;
        EveryPlan every = new EveryPlan(
                request.supplies().stream()
                        .mapToDouble(s -> s.waterVolume().toLitres())
                        .toArray(),
                request.bottles().stream()
                        .mapToDouble(b -> b.bottle().waterVolume().toLitres())
                        .toArray(),
                request.bottles().stream()
                        .mapToDouble(b -> b.bottle().target().toBar() + ambient)
                        .toArray());
        every.first = first;
        every.follow(
                request.supplies().stream()
                        .mapToDouble(s -> s.reading().toBar() + ambient)
                        .toArray(),
                request.bottles().stream()
                        .mapToDouble(b -> b.bottle().reading().toBar() + ambient)
                        .toArray(),
                0);
        return every;
    }

    /** Most bottles any plan makes ready. */
    int ready() {
        return ready;
    }

    /** Most gas above the highest stop that a plan with that many ready leaves [bar L, absolute]. */
    double gasLeft_barL() {
        return gasLeft_barL;
    }

    private void follow(double[] supply, double[] bottle, int depth) {
        note(supply, bottle);
        for (int s = 0; s < supply.length; s++) {
            for (int b = 0; b < bottle.length; b++) {
                if (bottle[b] >= stop_bar[b] * (1 - 1e-12) || supply[s] <= bottle[b] * (1 + 1e-12)) {
                    continue;
                }
                if (first >= 0 && s != first && firstStillServes(supply, bottle, depth)) {
                    continue;
                }
                if (s == first && leftFirst(depth)) {
                    continue;
                }
                int step = s * 32 + b;
                if (sameAsAnother(step, depth)) {
                    continue;
                }
                double supplyBefore = supply[s];
                double bottleBefore = bottle[b];
                double equal = (supply_L[s] * supplyBefore + bottle_L[b] * bottleBefore) / (supply_L[s] + bottle_L[b]);
                bottle[b] = Math.min(equal, stop_bar[b]);
                supply[s] = supplyBefore - bottle_L[b] * (bottle[b] - bottleBefore) / supply_L[s];
                steps[depth] = step;
                follow(supply, bottle, depth + 1);
                supply[s] = supplyBefore;
                bottle[b] = bottleBefore;
            }
        }
    }

    /** Whether the step could have come before a larger one with nothing changed: that order is tried elsewhere. */
    private boolean sameAsAnother(int step, int depth) {
        for (int k = depth - 1; k >= 0; k--) {
            boolean leavesFirst = steps[k] / 32 == first;
            if (leavesFirst || steps[k] / 32 == step / 32 || steps[k] % 32 == step % 32) {
                return false;
            }
            if (steps[k] > step) {
                return true;
            }
        }
        return false;
    }

    /** Whether the supply used first can still give to a bottle that has not been on it. */
    private boolean firstStillServes(double[] supply, double[] bottle, int depth) {
        for (int b = 0; b < bottle.length; b++) {
            if (bottle[b] < stop_bar[b] * (1 - 1e-12)
                    && supply[first] > bottle[b] * (1 + 1e-12)
                    && !wasOnFirst(b, depth)) {
                return true;
            }
        }
        return false;
    }

    private boolean wasOnFirst(int b, int depth) {
        for (int k = 0; k < depth; k++) {
            if (steps[k] == first * 32 + b) {
                return true;
            }
        }
        return false;
    }

    private boolean leftFirst(int depth) {
        return depth > 0 && steps[depth - 1] / 32 != first;
    }

    private void note(double[] supply, double[] bottle) {
        int count = 0;
        for (int b = 0; b < bottle.length; b++) {
            count += bottle[b] >= stop_bar[b] * (1 - 1e-12) ? 1 : 0;
        }
        double left = 0;
        for (int s = 0; s < supply.length; s++) {
            left += s == first ? 0 : supply_L[s] * Math.max(0, supply[s] - top_bar);
        }
        if (count > ready || (count == ready && left > gasLeft_barL)) {
            ready = count;
            gasLeft_barL = left;
        }
    }
}
