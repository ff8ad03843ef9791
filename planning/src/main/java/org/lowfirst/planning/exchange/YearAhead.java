package org.lowfirst.planning.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.lowfirst.planning.study.kernel.BankLevels;

/**
 * What the coming year costs when something is exchanged at a chosen bottle and later on the lowest whenever a bottle cannot be
 * finished. So that the year does not end by chance just before or after an exchange, the cost up to each of many last bottles is
 * averaged.
 */
final class YearAhead {

    private final BankLevels now;
    private final BankLevels bank;
    private final BankLevels full;
    private final double full_molPerM3;
    private final Terms terms;
    private final List<ComingBottles> futures;
    private final int year;

    /**
     * @param full full supplies in the places of the bank; their level is that of every supply that comes
     * @param year number of bottles in a year; each future has half as many again
     */
    YearAhead(BankLevels now, BankLevels full, Terms terms, List<ComingBottles> futures, int year) {
        this.now = now;
        this.full = full;
        bank = full.another();
        full_molPerM3 = full.density_molPerM3(0);
        this.terms = terms;
        this.futures = futures;
        this.year = year;
    }

    /** Cost of the year when these places are exchanged at once; none for waiting. */
    double cost(List<Integer> places) {
        double sum = 0.0;
        for (ComingBottles future : futures) {
            bank.copy(now);
            double cost = places.isEmpty() ? 0.0 : exchange(places);
            sum += cost + costFrom(future, 0);
        }
        return sum / futures.size();
    }

    /** Cost of the year when nothing is exchanged now, and the two lowest with one delivery when a bottle cannot be finished. */
    double costOfAPairLater() {
        double sum = 0.0;
        for (ComingBottles future : futures) {
            int first = firstUnfinished(future);
            bank.copy(now);
            for (int i = 0; i < first; i++) {
                fill(future, i);
            }
            double cost = 0.0;
            if (first < future.count()) {
                cost = exchangeLowest() + exchangeLowest() - terms.perDelivery();
                cost *= weight(first, future);
            }
            sum += cost + costFrom(future, first);
        }
        return sum / futures.size();
    }

    /** Cost of the year when the lowest is exchanged with so many fills left in the bank. */
    double costOfExchangingWith(int fillsLeft) {
        double sum = 0.0;
        for (ComingBottles future : futures) {
            int first = Math.max(0, firstUnfinished(future) - fillsLeft);
            bank.copy(now);
            for (int i = 0; i < first; i++) {
                fill(future, i);
            }
            double cost = exchangeLowest();
            sum += cost * weight(first, future) + costFrom(future, first);
        }
        return sum / futures.size();
    }

    /** Bottles finished before the first that cannot be, on the mean. */
    double fillsLeft() {
        double sum = 0.0;
        for (ComingBottles future : futures) {
            sum += firstUnfinished(future);
        }
        return sum / futures.size();
    }

    private int firstUnfinished(ComingBottles future) {
        bank.copy(now);
        int done = 0;
        while (done < future.count() && fill(future, done)) {
            done++;
        }
        return done;
    }

    private boolean fill(ComingBottles future, int i) {
        return !future.needs(i)
                || bank.fill(
                        future.bottle_m3(i), future.start_molPerM3(i), future.stop_molPerM3(i), BankLevels.NO_BOOSTER);
    }

    private double costFrom(ComingBottles future, int first) {
        double cost = 0.0;
        for (int i = first; i < future.count(); i++) {
            boolean done = fill(future, i) || !canBeDone(future, i);
            while (!done) {
                cost += exchangeLowest() * weight(i, future);
                done = fill(future, i);
            }
        }
        return cost;
    }

    /** Whether full supplies alone finish the bottle; if not, nothing is exchanged for it. */
    private boolean canBeDone(ComingBottles future, int i) {
        return full.reaches(
                future.bottle_m3(i), future.start_molPerM3(i), future.stop_molPerM3(i), BankLevels.NO_BOOSTER);
    }

    /** Share of the last bottles looked at that come after this one. */
    private double weight(int i, ComingBottles future) {
        return i < year ? 1.0 : (future.count() - i) / (double) (future.count() - year);
    }

    private double exchangeLowest() {
        return exchange(List.of(bank.lowest()));
    }

    private double exchange(List<Integer> places) {
        List<Integer> highestFirst = new ArrayList<>(places);
        highestFirst.sort(Comparator.reverseOrder());
        highestFirst.forEach(place -> bank.exchange(place, full_molPerM3));
        return places.size() * terms.contentPrice() + terms.perDelivery();
    }
}
