package org.lowfirst.planning.ahead;

import java.util.Arrays;
import org.lowfirst.planning.study.kernel.Draws;

/**
 * Draws the next bottle from those of the past and those of the list, and puts another like it back each time (Polya's urn): so
 * the mix of the days ahead is as uncertain as the history is short. Mutable, used by one thread.
 */
final class Urn {

    private final int listed;
    private final int past;
    private final double listedWeigh;
    private int[] drawn = new int[64];
    private int count;

    /**
     * Kinds are numbered: first the listed ones, then the past ones.
     *
     * @param listedWeigh how many past fills all listed ones weigh together
     */
    Urn(int listed, int past, double listedWeigh) {
        this.listed = listed;
        this.past = past;
        this.listedWeigh = listed == 0 ? 0.0 : listedWeigh;
    }

    void refill() {
        count = 0;
    }

    int draw(Draws draws) {
        double place = draws.uniform() * (listedWeigh + past + count);
        int kind;
        if (place < listedWeigh) {
            kind = Math.min(listed - 1, (int) (place / listedWeigh * listed));
        } else if (place - listedWeigh < past) {
            kind = listed + Math.min(past - 1, (int) (place - listedWeigh));
        } else {
            kind = drawn[Math.min(count - 1, (int) (place - listedWeigh - past))];
        }
        if (count == drawn.length) {
            drawn = Arrays.copyOf(drawn, 2 * count);
        }
        drawn[count++] = kind;
        return kind;
    }
}
