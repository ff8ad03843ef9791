package org.lowfirst.benchmarks.gas;

import java.util.Random;

/** A ring of states as they occur in filling, so that no benchmark repeats one input. */
final class RandomStates {

    static final int COUNT = 1024;

    final double[] p_Pa = new double[COUNT];
    final double[] T_K = new double[COUNT];
    private int at;

    RandomStates() {
        Random random = new Random(1);
        for (int i = 0; i < COUNT; i++) {
            p_Pa[i] = 1e5 + 2.5e7 * random.nextDouble();
            T_K[i] = 260.0 + 90.0 * random.nextDouble();
        }
    }

    int next() {
        at = (at + 1) & (COUNT - 1);
        return at;
    }
}
