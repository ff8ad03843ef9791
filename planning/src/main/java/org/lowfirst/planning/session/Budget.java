package org.lowfirst.planning.session;

import org.lowfirst.gas.Amount;

/** Counts the steps of a search and asks now and then whether to go on. */
final class Budget {

    /** So often that somebody who stops a search waits a moment at most; a step of a large session takes longest. */
    private static final long ASK_EVERY = 1L << 9;

    private static final long ASK_ROUNDS = 1L << 5;

    private final long most;
    private final SessionWatch watch;
    private long spent;
    private long share;
    private long asked;
    private boolean stopped;
    private SessionWatch.SoFar soFar;

    Budget(long most, SessionWatch watch, SessionWatch.SoFar start) {
        this.most = most;
        this.watch = watch;
        share = most;
        soFar = start;
    }

    /** Allows at most this many steps until the next call. */
    void allow(long steps) {
        share = Math.min(most, spent + steps);
    }

    /** Takes a step; false when there is none left. */
    boolean spend() {
        if (spent >= share || stopped) {
            return false;
        }
        spent++;
        if (spent % ASK_EVERY == 0) {
            ask();
        }
        return true;
    }

    /** Whether nobody has stopped the search; for work that is counted elsewhere. */
    boolean goesOn() {
        if (++asked % ASK_ROUNDS == 0) {
            ask();
        }
        return !stopped;
    }

    /** Whether the last search was cut off. */
    boolean cutOff() {
        return spent >= share || stopped;
    }

    /** Whether somebody stopped the whole search. */
    boolean stopped() {
        return stopped;
    }

    long spent() {
        return spent;
    }

    long left() {
        return most - spent;
    }

    /** Tells of the best plan so far. */
    void report(Problem problem, Candidate best, int readyAtMost) {
        double left_mol = problem.usable_mol(problem.supply_molPerM3) - best.loss_mol();
        soFar = new SessionWatch.SoFar(
                Choice.of(best.layout().stops()).ready(), readyAtMost, new Amount(Math.max(0.0, left_mol)), spent);
        ask();
    }

    private void ask() {
        SessionWatch.SoFar now = new SessionWatch.SoFar(soFar.ready(), soFar.readyAtMost(), soFar.gasLeft(), spent);
        if (!watch.goOn(now)) {
            stopped = true;
        }
    }
}
