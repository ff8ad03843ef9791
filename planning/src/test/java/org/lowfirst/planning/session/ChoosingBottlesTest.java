package org.lowfirst.planning.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.BottleToFill;

/** Which bottles, and whether to wish or floor, against every choice tried with every plan. */
final class ChoosingBottlesTest {

    private final SessionPlanner planner = Sessions.ideal();

    static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void firstPriorityThenWish(long seed) {
        bestBy(seed, List.of(Criterion.PRIORITY, Criterion.WISH));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void firstWishThenPriority(long seed) {
        bestBy(seed, List.of(Criterion.WISH, Criterion.PRIORITY));
    }

    private void bestBy(long seed, List<Criterion> order) {
        SessionRequest drawn =
                withFloors(Sessions.random(seed, 2 + (int) (seed % 2), 3, true, false, 1.6), seed, order);
        SessionPlan plan = Sessions.plan(planner, drawn);
        int[] best = null;
        for (List<SessionBottle> choice : choices(drawn.bottles())) {
            List<SessionBottle> taken =
                    choice.stream().filter(b -> b.priority() < 100).toList();
            SessionRequest asked = new SessionRequest(drawn.supplies(), taken);
            if (taken.isEmpty() || EveryPlan.of(asked).ready() == taken.size()) {
                int[] key = key(drawn, choice, order);
                best = best == null || Arrays.compare(key, best) > 0 ? key : best;
            }
        }
        assertThat(plan.proof().bestChoice()).isTrue();
        assertThat(planned(drawn, plan, order)).containsExactly(best);
    }

    private static SessionRequest withFloors(SessionRequest drawn, long seed, List<Criterion> order) {
        Random random = new Random(seed);
        List<SessionBottle> bottles = new ArrayList<>();
        for (SessionBottle asked : drawn.bottles()) {
            double start = asked.bottle().reading().toBar();
            double wish = asked.bottle().target().toBar();
            double floor = start + (wish - start) * (0.6 + 0.4 * random.nextDouble());
            bottles.add(Sessions.withFloor(asked, 1 + random.nextInt(2), floor));
        }
        return new SessionRequest(drawn.supplies(), bottles, order, SessionPace.UNHURRIED, null);
    }

    /** Every bottle to its wish, to its floor (as a bottle that wishes no more), or left out (priority 100). */
    private static List<List<SessionBottle>> choices(List<SessionBottle> bottles) {
        List<List<SessionBottle>> all = List.of(List.of());
        for (SessionBottle asked : bottles) {
            List<List<SessionBottle>> longer = new ArrayList<>();
            for (List<SessionBottle> choice : all) {
                for (SessionBottle option : options(asked)) {
                    List<SessionBottle> with = new ArrayList<>(choice);
                    with.add(option);
                    longer.add(with);
                }
            }
            all = longer;
        }
        return all;
    }

    private static List<SessionBottle> options(SessionBottle asked) {
        GaugePressure floor = java.util.Objects.requireNonNull(asked.floor());
        BottleToFill lower = asked.bottle().withTarget(floor);
        return List.of(
                asked,
                new SessionBottle(lower, asked.priority(), floor),
                new SessionBottle(asked.bottle(), 100, floor));
    }

    private static int[] key(SessionRequest drawn, List<SessionBottle> choice, List<Criterion> order) {
        int[] ready = new int[3];
        int full = 0;
        for (int b = 0; b < choice.size(); b++) {
            if (choice.get(b).priority() < 100) {
                ready[0]++;
                ready[choice.get(b).priority()]++;
                full += choice.get(b)
                                .bottle()
                                .target()
                                .equals(drawn.bottles().get(b).bottle().target())
                        ? 1
                        : 0;
            }
        }
        return key(ready, full, order);
    }

    private static int[] planned(SessionRequest drawn, SessionPlan plan, List<Criterion> order) {
        int[] ready = new int[3];
        int full = 0;
        for (int b = 0; b < drawn.bottles().size(); b++) {
            BottleEnd end = plan.course().ends().get(b);
            if (end.readiness() != Readiness.NOT_READY) {
                ready[0]++;
                ready[drawn.bottles().get(b).priority()]++;
                full += end.readiness() == Readiness.FULL ? 1 : 0;
            }
        }
        return key(ready, full, order);
    }

    private static int[] key(int[] ready, int full, List<Criterion> order) {
        return order.get(0) == Criterion.WISH
                ? new int[] {ready[0], full, ready[1], ready[2]}
                : new int[] {ready[0], ready[1], ready[2], full};
    }
}
