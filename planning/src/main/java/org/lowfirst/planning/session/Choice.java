package org.lowfirst.planning.session;

import java.util.ArrayList;
import java.util.List;

/** Which bottles are taken on and to which stop. */
final class Choice {

    private final double[] stop;

    private Choice(double[] stop) {
        this.stop = stop;
    }

    static Choice of(double[] stop) {
        return new Choice(stop.clone());
    }

    /** Every choice there is: each bottle to its wish, to its floor, or not at all. */
    static List<Choice> all(Problem problem) {
        List<Choice> found = new ArrayList<>();
        collect(problem, 0, new double[problem.bottles], found);
        return found;
    }

    private static void collect(Problem problem, int b, double[] stop, List<Choice> found) {
        if (b == problem.bottles) {
            found.add(of(stop));
            return;
        }
        double q = problem.bottle_molPerM3[b];
        double wish = problem.wish_molPerM3[b];
        double floor = problem.floor_molPerM3[b];
        stop[b] = wish;
        collect(problem, b + 1, stop, found);
        if (floor < wish && !Problem.at(q, wish)) {
            stop[b] = floor;
            collect(problem, b + 1, stop, found);
        }
        if (!Problem.at(q, floor)) {
            stop[b] = Double.NaN;
            collect(problem, b + 1, stop, found);
        }
    }

    double[] stops() {
        return stop.clone();
    }

    int ready() {
        int count = 0;
        for (double one : stop) {
            count += Double.isNaN(one) ? 0 : 1;
        }
        return count;
    }

    int full(Problem problem) {
        int count = 0;
        for (int b = 0; b < stop.length; b++) {
            count += stop[b] == problem.wish_molPerM3[b] ? 1 : 0;
        }
        return count;
    }

    /** Bottles of one priority ready. */
    int ready(Problem problem, int priority) {
        int count = 0;
        for (int b = 0; b < stop.length; b++) {
            count += problem.priority[b] == priority && !Double.isNaN(stop[b]) ? 1 : 0;
        }
        return count;
    }

    /** Whether every bottle is asked for at least as much as by the other choice. */
    boolean asksAtLeast(Choice other) {
        for (int b = 0; b < stop.length; b++) {
            if (!Double.isNaN(other.stop[b]) && !(stop[b] >= other.stop[b])) {
                return false;
            }
        }
        return true;
    }
}
