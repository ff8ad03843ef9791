package org.lowfirst.planning.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lowfirst.planning.session.Calendar.StageAt;

/** The fewest changes, against every order of the stages. */
final class CalendarTest {

    static LongStream seeds() {
        return LongStream.range(0, 80);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void noOrderOfTheStagesHasFewerChanges(long seed) {
        java.util.Random random = new java.util.Random(seed);
        int[][] order = new int[2 + random.nextInt(2)][];
        for (int s = 0; s < order.length; s++) {
            order[s] = random.ints(0, 4).distinct().limit(1 + random.nextInt(3)).toArray();
        }
        Layout layout = new Layout(order, new double[4]);
        Calendar.Way best = new Calendar(layout, new Instant(), true).best(4);
        assertThat(best.changes).isEqualTo(fewest(layout, new int[order.length], -1, -1));
        assertThat(best.path())
                .hasSize(java.util.Arrays.stream(order).mapToInt(o -> o.length).sum());
    }

    private static int fewest(Layout layout, int[] done, int lastSupply, int lastBottle) {
        int fewest = Integer.MAX_VALUE;
        boolean over = true;
        for (int s = 0; s < done.length; s++) {
            if (done[s] == layout.on(s)) {
                continue;
            }
            over = false;
            int b = layout.bottle(s, done[s]);
            boolean waits = false;
            for (int lower = 0; lower < s; lower++) {
                for (int k = done[lower]; k < layout.on(lower); k++) {
                    waits |= layout.bottle(lower, k) == b;
                }
            }
            if (!waits) {
                done[s]++;
                int rest = fewest(layout, done, s, b);
                done[s]--;
                fewest = Math.min(fewest, rest + (s != lastSupply ? 1 : 0) + (b != lastBottle ? 1 : 0));
            }
        }
        return over ? 0 : fewest;
    }

    private static final class Instant implements Calendar.StageTimes {
        @Override
        public double open_s(StageAt stage) {
            return 0;
        }

        @Override
        public double change_s(boolean hose, boolean supply) {
            return 0;
        }

        @Override
        public double rest_s() {
            return 0;
        }
    }
}
