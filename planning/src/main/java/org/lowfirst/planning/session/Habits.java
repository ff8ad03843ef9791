package org.lowfirst.planning.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.lowfirst.gas.Amount;
import org.lowfirst.planning.session.HabitResult.BottleOrder;

/** What the usual habits would come to: bottle by bottle, each lowest supply first to its wish. */
final class Habits {

    private final Problem problem;

    Habits(Problem problem) {
        this.problem = problem;
    }

    List<HabitResult> all() {
        List<HabitResult> results = new ArrayList<>();
        for (BottleOrder order : BottleOrder.values()) {
            results.add(result(order));
        }
        return results;
    }

    private HabitResult result(BottleOrder order) {
        double[] r = problem.supply_molPerM3.clone();
        double[] q = problem.bottle_molPerM3.clone();
        for (int b : bottles(order)) {
            fill(b, r, q);
        }
        int ready = 0;
        for (int b = 0; b < problem.bottles; b++) {
            ready += Problem.at(q[b], problem.floor_molPerM3[b]) ? 1 : 0;
        }
        return new HabitResult(order, ready, new Amount(problem.usable_mol(r)));
    }

    private void fill(int b, double[] r, double[] q) {
        int[] lowestFirst = IntStream.range(0, problem.supplies)
                .boxed()
                .sorted(Comparator.<Integer, Boolean>comparing(s -> s >= problem.usedFirst)
                        .thenComparing(s -> r[s]))
                .mapToInt(Integer::intValue)
                .toArray();
        for (int s : lowestFirst) {
            if (!Problem.at(q[b], problem.wish_molPerM3[b]) && problem.gives(r[s], s, q[b])) {
                problem.stage(r, q, s, b, problem.wish_molPerM3[b]);
            }
        }
    }

    private int[] bottles(BottleOrder order) {
        Comparator<Integer> byReading = Comparator.comparingDouble(b -> problem.bottle_molPerM3[b]);
        return IntStream.range(0, problem.bottles)
                .boxed()
                .sorted(
                        switch (order) {
                            case AS_LISTED -> Comparator.<Integer>naturalOrder();
                            case EMPTIEST_FIRST -> byReading;
                            case FULLEST_FIRST -> byReading.reversed();
                        })
                .mapToInt(Integer::intValue)
                .toArray();
    }
}
