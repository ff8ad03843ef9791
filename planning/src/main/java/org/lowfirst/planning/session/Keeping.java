package org.lowfirst.planning.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Which of the supplies above the highest stop stay above it to the end. A supply that may fall below it costs all its gas above
 * the stop, but may then be used up freely.
 */
final class Keeping {

    private static final int MOST = 64;

    private Keeping() {}

    /** No supply is kept. */
    static boolean[] none(Problem problem) {
        return new boolean[problem.supplies];
    }

    /** Every way of keeping, least fixed loss first; at most {@link #MOST} of them. */
    static List<boolean[]> ways(Problem problem) {
        List<Integer> above = new ArrayList<>();
        for (int s = 0; s < problem.supplies; s++) {
            if (problem.usable_mol(s, problem.supply_molPerM3[s]) > 0.0) {
                above.add(s);
            }
        }
        List<boolean[]> ways = new ArrayList<>();
        for (long keep = 0; keep < 1L << Math.min(above.size(), 12); keep++) {
            boolean[] kept = new boolean[problem.supplies];
            for (int i = 0; i < above.size(); i++) {
                kept[above.get(i)] = i >= 12 || (keep >> i & 1) == 1;
            }
            ways.add(kept);
        }
        ways.sort(Comparator.comparingDouble(kept -> OrderSearch.fixed_mol(problem, kept)));
        return ways;
    }

    /** Whether a way so far down the list is looked at closely. */
    static boolean close(int place) {
        return place < MOST;
    }
}
