package org.lowfirst.planning.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Simulates a study on several threads. The answer does not depend on how many. */
public final class Studying {

    private static final int BLOCKS_PER_THREAD = 4;

    private final PreparedStudy study;
    private final StudyWatch watch;
    private final StudyTotals all;
    private long runsDone;
    private boolean stopped;

    private Studying(PreparedStudy study, StudyWatch watch) {
        this.study = study;
        this.watch = watch;
        all = study.noRuns();
    }

    /** What is wrong with a request, empty when it can be studied. */
    public static Optional<Objection> objection(StudyRequest request) {
        return new StudyCheck(request).look().first();
    }

    /**
     * Runs a study to its end, or until the watch ends it; then the answer covers the runs done so far.
     *
     * @param threads how many work on it, at least 1
     * @param watch hears of the progress and may end it; so does interrupting the calling thread
     */
    public static StudyOutcome study(StudyRequest request, int threads, StudyWatch watch) {
        Optional<Objection> objection = objection(request);
        if (objection.isPresent()) {
            return new StudyOutcome.Refused(objection.get());
        }
        PreparedStudy study = PreparedStudy.of(request);
        StudyTotals totals = new Studying(study, watch).totals(threads);
        return totals.runs() < 2
                ? new StudyOutcome.Refused(
                        new Objection.Unfitting("study", "not be ended before its second run is done"))
                : study.result(totals);
    }

    private StudyTotals totals(int threads) {
        ExecutorService pool = Executors.newFixedThreadPool(threads, work -> {
            Thread thread = new Thread(work, "study");
            thread.setDaemon(true);
            return thread;
        });
        try {
            runBlocks(pool, threads * BLOCKS_PER_THREAD);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        } finally {
            stop();
            pool.shutdownNow();
        }
        return all;
    }

    private void runBlocks(ExecutorService pool, int atOnce) throws InterruptedException {
        for (long block = 0; block < study.blocks() && goOn(); block += atOnce) {
            List<Callable<StudyTotals>> round = new ArrayList<>();
            for (long b = block; b < Math.min(block + atOnce, study.blocks()); b++) {
                long mine = b;
                round.add(() -> study.block(mine, this::goOn, this::ran));
            }
            for (Future<StudyTotals> part : pool.invokeAll(round)) {
                all.add(done(part));
            }
        }
    }

    private static StudyTotals done(Future<StudyTotals> part) throws InterruptedException {
        try {
            return part.get();
        } catch (ExecutionException failed) {
            throw new IllegalStateException("A run failed.", failed.getCause());
        }
    }

    private synchronized boolean goOn() {
        if (!stopped) {
            stopped = !watch.goOn(runsDone, study.request().extent().runs());
        }
        return !stopped;
    }

    private synchronized void ran() {
        runsDone++;
    }

    private synchronized void stop() {
        stopped = true;
    }
}
