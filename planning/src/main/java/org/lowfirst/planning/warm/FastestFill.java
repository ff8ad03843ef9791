package org.lowfirst.planning.warm;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;
import org.lowfirst.transfer.warm.Answer;
import org.lowfirst.transfer.warm.RiseRate;
import org.lowfirst.transfer.warm.WarmRefusal;

/**
 * The fastest way to fill a bottle that keeps a rise limit and ends near enough to full.
 *
 * <p>Two ways are tried: rising more gently, and rising at the limit with one to three rests and top-ups. More time gives cooler gas
 * and so a fuller bottle, so each way has one least time, found by bisection to 1 %.
 *
 * @param schedule the fastest
 * @param others the ways that also do, fastest first, the fastest included
 */
public record FastestFill(FillSchedule schedule, List<Way> others) {

    private static final int MOST_TOP_UPS = 3;
    private static final double GENTLEST = 0.1;
    private static final double LONGEST_REST_S = 4.0 * 3600.0;
    private static final double SHORTEST_REST_S = 10.0;
    private static final double PRECISION = 0.01;

    public FastestFill {
        others = List.copyOf(others);
    }

    /**
     * One way that does.
     *
     * @param rate rise of the gauge
     * @param topUps how many
     * @param rest_s before each [s]
     * @param total_s in all [s]
     * @param percentOfWanted contents as part of what it may or shall get [%]
     */
    public record Way(RiseRate rate, int topUps, double rest_s, double total_s, double percentOfWanted) {}

    /**
     * Looks for the fastest.
     *
     * @param request its pace has the limit of the rise; its top-ups and rests are not looked at
     * @param percentShort how far from what the bottle may or shall get it may end [%], 0.01 to 50
     */
    public static Answer<FastestFill> find(FillInTimeRequest request, double percentShort) {
        WarmRefusal wrong = WarmCheck.number("per cent short of full", percentShort, 0.01, 50.0, "%");
        if (wrong != null) {
            return Answer.refused(wrong);
        }
        double wanted = 100.0 - percentShort;
        Pace limit = request.pace().toppedUp(0, 0.0);
        Answer<FillSchedule> atLimit = quick(request.with(limit));
        if (!(atLimit instanceof Answer.Given<FillSchedule> first)) {
            return Answer.refused(((Answer.Refused<FillSchedule>) atLimit).refusal());
        }
        if (first.value().percentOfWanted() >= wanted) {
            return FillInTime.plan(request.with(limit))
                    .map(schedule -> new FastestFill(schedule, List.of(way(schedule))));
        }
        List<FillSchedule> found = new ArrayList<>();
        double best = first.value().percentOfWanted();
        FillSchedule gentle = least(
                request,
                wanted,
                1.0,
                1.0 / GENTLEST,
                slower -> limit.with(limit.rate().times(1.0 / slower)));
        best = Math.max(best, keep(found, gentle, wanted));
        for (int topUps = 1; topUps <= MOST_TOP_UPS; topUps++) {
            int times = topUps;
            FillSchedule rested =
                    least(request, wanted, SHORTEST_REST_S, LONGEST_REST_S, rest_s -> limit.toppedUp(times, rest_s));
            best = Math.max(best, keep(found, rested, wanted));
        }
        if (found.isEmpty()) {
            return Answer.refused(new WarmRefusal.NotReachable("contents of the bottle", best, wanted, "%"));
        }
        found.sort(Comparator.comparingDouble(FillSchedule::total_s));
        List<Way> ways = found.stream().map(FastestFill::way).toList();
        return FillInTime.plan(found.get(0).request()).map(schedule -> new FastestFill(schedule, ways));
    }

    private static double keep(List<FillSchedule> found, @Nullable FillSchedule schedule, double wanted) {
        if (schedule == null) {
            return 0.0;
        }
        if (schedule.percentOfWanted() >= wanted) {
            found.add(schedule);
        }
        return schedule.percentOfWanted();
    }

    /** The schedule at the least effort that does, or at the most effort when none does; null when it cannot be computed. */
    private static @Nullable FillSchedule least(
            FillInTimeRequest request, double wanted, double low, double high, DoubleFunction<Pace> pace) {
        FillSchedule atMost = orNull(quick(request.with(pace.apply(high))));
        if (atMost == null || atMost.percentOfWanted() < wanted) {
            return atMost;
        }
        FillSchedule enough = atMost;
        double from = low;
        double to = high;
        while (to > from * (1.0 + PRECISION)) {
            double middle = Math.sqrt(from * to);
            FillSchedule schedule = orNull(quick(request.with(pace.apply(middle))));
            if (schedule != null && schedule.percentOfWanted() >= wanted) {
                enough = schedule;
                to = middle;
            } else {
                from = middle;
            }
        }
        return enough;
    }

    private static Answer<FillSchedule> quick(FillInTimeRequest request) {
        return FillInTime.plan(request, Double.POSITIVE_INFINITY);
    }

    private static @Nullable FillSchedule orNull(Answer<FillSchedule> answer) {
        return answer instanceof Answer.Given<FillSchedule> given ? given.value() : null;
    }

    private static Way way(FillSchedule schedule) {
        Pace pace = schedule.request().pace();
        return new Way(pace.rate(), pace.topUps(), pace.rest_s(), schedule.total_s(), schedule.percentOfWanted());
    }
}
