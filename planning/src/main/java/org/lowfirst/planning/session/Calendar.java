package org.lowfirst.planning.session;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Puts the stages of a layout one after another, with few changes and little waiting.
 *
 * <p>A stage may come once the stages before it on its supply and on its bottle are done; whatever order is chosen between
 * them, every pressure comes out the same. The orders are followed step by step, keeping for each set of done stages the best
 * way there (dynamic programming; the widest row is limited).
 */
final class Calendar {

    private static final int WIDEST = 2_000;
    private static final int WIDEST_OF_MANY = 150;
    private static final int MANY_STAGES = 24;

    private final Layout layout;
    private final StageTimes times;
    private final Comparator<Way> better;

    /**
     * @param changesFirst whether fewer changes count more than less time
     */
    Calendar(Layout layout, StageTimes times, boolean changesFirst) {
        this.layout = layout;
        this.times = times;
        Comparator<Way> changes = Comparator.comparingInt(way -> way.changes);
        Comparator<Way> time = Comparator.comparingDouble(way -> way.clock_s);
        better = (changesFirst ? changes.thenComparing(time) : time.thenComparing(changes))
                .thenComparing(
                        way -> way.stage,
                        Comparator.comparingInt(StageAt::supply).thenComparingInt(StageAt::place));
    }

    /**
     * A stage of the layout.
     *
     * @param place its place in the order of its supply
     */
    record StageAt(int supply, int place) {
        static final StageAt NONE = new StageAt(-1, -1);
    }

    /** How long a stage takes and what the changes before it take [s]. */
    interface StageTimes {
        double open_s(StageAt stage);

        double change_s(boolean hose, boolean supply);

        double rest_s();
    }

    /** A way of doing some stages. */
    static final class Way {
        final int[] done;
        final StageAt stage;
        final int changes;
        final double start_s;
        final double clock_s;
        final double[] rested_s;
        private final @Nullable Way before;

        Way(
                int[] done,
                StageAt stage,
                int changes,
                double start_s,
                double clock_s,
                double[] rested_s,
                @Nullable Way before) {
            this.done = done;
            this.stage = stage;
            this.changes = changes;
            this.start_s = start_s;
            this.clock_s = clock_s;
            this.rested_s = rested_s;
            this.before = before;
        }

        /** The ways from the first stage to this one. */
        List<Way> path() {
            List<Way> path = new ArrayList<>();
            for (Way way = this; way != null && way.before != null; way = way.before) {
                path.add(0, way);
            }
            return path;
        }
    }

    /** The best way of doing all stages. */
    Way best(int bottles) {
        int stages = IntStream.range(0, layout.supplies()).map(layout::on).sum();
        List<Way> row =
                List.of(new Way(new int[layout.supplies()], StageAt.NONE, 0, 0.0, 0.0, new double[bottles], null));
        for (int i = 0; i < stages; i++) {
            Map<String, Way> next = new HashMap<>();
            for (Way way : row) {
                for (int s = 0; s < layout.supplies(); s++) {
                    if (mayFollow(way, s)) {
                        Way longer = longer(way, s);
                        next.merge(key(longer), longer, (a, b) -> better.compare(a, b) <= 0 ? a : b);
                    }
                }
            }
            row = next.values().stream()
                    .sorted(better.thenComparing(Calendar::key))
                    .limit(stages > MANY_STAGES ? WIDEST_OF_MANY : WIDEST)
                    .toList();
        }
        return row.get(0);
    }

    private static String key(Way way) {
        return Arrays.toString(way.done) + way.stage.supply();
    }

    /** Whether the next stage on supply s has no stage of its bottle on a lower supply still to come. */
    private boolean mayFollow(Way way, int s) {
        if (way.done[s] == layout.on(s)) {
            return false;
        }
        int b = layout.bottle(s, way.done[s]);
        for (int lower = 0; lower < s; lower++) {
            for (int k = way.done[lower]; k < layout.on(lower); k++) {
                if (layout.bottle(lower, k) == b) {
                    return false;
                }
            }
        }
        return true;
    }

    private Way longer(Way way, int s) {
        StageAt stage = new StageAt(s, way.done[s]);
        int b = layout.bottle(s, stage.place());
        boolean hose = way.stage.supply() < 0 || bottle(way.stage) != b;
        boolean supply = way.stage.supply() != s;
        double start_s = Math.max(way.clock_s + times.change_s(hose, supply), way.rested_s[b]);
        double clock_s = start_s + times.open_s(stage);
        int[] done = way.done.clone();
        done[s]++;
        double[] rested_s = way.rested_s.clone();
        rested_s[b] = clock_s + times.rest_s();
        int changes = way.changes + (hose ? 1 : 0) + (supply ? 1 : 0);
        return new Way(done, stage, changes, start_s, clock_s, rested_s, Objects.requireNonNull(way));
    }

    private int bottle(StageAt stage) {
        return layout.bottle(stage.supply(), stage.place());
    }
}
