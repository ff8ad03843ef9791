package org.lowfirst.planning.ahead;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.lowfirst.planning.study.kernel.Draws;

/** Many ways the days ahead may go, each with the use, the mix and the chance of its own. */
final class Lives {

    private static final int FOUR_WEEKS = 28;
    private static final int MOST_POINTS = 60;

    private final AheadRequest request;
    private final int longest_d;
    private final Map<LocalDate, Double> events = new HashMap<>();

    private final int[] fillsLeft;
    /** Day, from 0 for today, on which a bottle cannot be finished. */
    private final int[] empty_d;
    /** Day on which the reserve is touched. */
    private final int[] reserve_d;
    /** By life and day: fills wanted before that day. */
    private final int[][] before;

    private double inFourWeeks;

    Lives(AheadRequest request, AheadAssumptions assumptions) {
        this.request = request;
        longest_d = assumptions.longestAhead_d();
        int lives = assumptions.lives();
        fillsLeft = new int[lives];
        empty_d = new int[lives];
        reserve_d = new int[lives];
        before = new int[lives][];
        for (PlannedEvent event : request.events()) {
            for (int day = 0; day < event.days(); day++) {
                events.merge(event.date().plusDays(day), event.fills() / event.days(), Double::sum);
            }
        }
    }

    void live(UseModel use, BankAhead bank, Urn urn, Draws draws, AheadAssumptions assumptions) {
        for (int i = 0; i < assumptions.samplerFirst(); i++) {
            use.step();
        }
        for (int life = 0; life < fillsLeft.length; life++) {
            for (int i = 0; i < assumptions.samplerBetween(); i++) {
                use.step();
            }
            fillsLeft[life] = bank.fillsLeft(urn, draws);
            liveOnce(life, use, draws);
        }
    }

    private void liveOnce(int life, UseModel use, Draws draws) {
        int[] wantedBefore = new int[longest_d + 1];
        int keeping = fillsLeft[life] - request.ordering().reserveFills();
        int wanted = 0;
        int day = 0;
        empty_d[life] = longest_d;
        reserve_d[life] = keeping < 0 ? 0 : longest_d;
        while (day < longest_d && (wanted <= fillsLeft[life] || day < FOUR_WEEKS)) {
            wantedBefore[day] = wanted;
            LocalDate date = request.today().plusDays(day);
            wanted += use.comingOn(date) + draws.poisson(events.getOrDefault(date, 0.0));
            if (day < FOUR_WEEKS) {
                inFourWeeks += wanted - wantedBefore[day];
            }
            if (wanted > keeping) {
                reserve_d[life] = Math.min(reserve_d[life], day);
            }
            if (wanted > fillsLeft[life]) {
                empty_d[life] = Math.min(empty_d[life], day);
            }
            day++;
        }
        Arrays.fill(wantedBefore, day, longest_d + 1, wanted);
        before[life] = wantedBefore;
    }

    Band fillsLeft() {
        return Band.ofEqual(fillsLeft);
    }

    Band daysLeft() {
        return Band.ofEqual(empty_d);
    }

    double fillsPerWeek() {
        return inFourWeeks / fillsLeft.length / (FOUR_WEEKS / 7.0);
    }

    /** The day on which the reserve is touched with this chance or less, or the longest looked ahead. */
    int reserveTouched_d(double chance) {
        int[] sorted = reserve_d.clone();
        Arrays.sort(sorted);
        return Band.at(sorted, chance);
    }

    double chanceReserveTouchedBefore(int day) {
        return shareBefore(reserve_d, day);
    }

    double chanceEmptyBefore(int day) {
        return shareBefore(empty_d, day);
    }

    private static double shareBefore(int[] days, int day) {
        return Arrays.stream(days).filter(d -> d < day).count() / (double) days.length;
    }

    List<DayAhead> days() {
        int[] sorted = empty_d.clone();
        Arrays.sort(sorted);
        int end = Math.min(longest_d, Band.at(sorted, 0.95) + 1);
        int step = Math.max(1, (end + MOST_POINTS - 1) / MOST_POINTS);
        List<DayAhead> days = new ArrayList<>();
        int[] left = new int[fillsLeft.length];
        for (int day = 0; day <= end; day += step) {
            for (int life = 0; life < left.length; life++) {
                left[life] = Math.max(0, fillsLeft[life] - before[life][day]);
            }
            days.add(new DayAhead(request.today().plusDays(day), Band.ofEqual(left)));
        }
        return days;
    }
}
