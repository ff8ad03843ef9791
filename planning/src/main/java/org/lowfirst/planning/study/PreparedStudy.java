package org.lowfirst.planning.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * A study ready to run. Immutable and thread-safe; every run is a function of the request and its number alone, so that runs can
 * be spread over threads and machines in any way.
 */
public final class PreparedStudy {

    /** Runs that are added up one after another; the blocks are then joined in their order. */
    public static final int RUNS_IN_A_BLOCK = 16;

    private final StudyRequest request;
    private final Numbers numbers;

    private PreparedStudy(StudyRequest request) {
        this.request = request;
        numbers = Numbers.of(request);
    }

    /**
     * @throws IllegalArgumentException when the request must be refused; see {@link Studying#objection}
     */
    public static PreparedStudy of(StudyRequest request) {
        new StudyCheck(request).look().first().ifPresent(why -> {
            throw new IllegalArgumentException("The request must not be refused: " + why);
        });
        return new PreparedStudy(request);
    }

    public StudyRequest request() {
        return request;
    }

    /** Lives one run through; one ledger for each alternative, in the order of the request. */
    public List<RunLedger> run(long run) {
        return run(run, () -> true);
    }

    /** The same, but empty when the answer to {@code goOn}, asked before each alternative, is no. */
    private List<RunLedger> run(long run, BooleanSupplier goOn) {
        DrawnDemand demand = DrawnDemand.of(request, numbers, run);
        List<RunLedger> ledgers = new ArrayList<>(numbers.ways().size());
        for (Way way : numbers.ways()) {
            if (!goOn.getAsBoolean()) {
                return List.of();
            }
            ledgers.add(new BenchYears(request, numbers, way, run).live(demand));
        }
        return ledgers;
    }

    public long blocks() {
        return (request.extent().runs() + RUNS_IN_A_BLOCK - 1) / RUNS_IN_A_BLOCK;
    }

    /**
     * The runs of one block, added up.
     *
     * @param block from 0
     */
    public StudyTotals block(long block) {
        return block(block, () -> true, () -> {});
    }

    /** The same; ends after the last whole run when the answer to {@code goOn} is no. */
    StudyTotals block(long block, BooleanSupplier goOn, Runnable afterEachRun) {
        StudyTotals totals = noRuns();
        long first = block * RUNS_IN_A_BLOCK;
        long end = Math.min(first + RUNS_IN_A_BLOCK, request.extent().runs());
        for (long run = first; run < end; run++) {
            List<RunLedger> ledgers = run(run, goOn);
            if (ledgers.isEmpty()) {
                break;
            }
            totals.add(ledgers);
            afterEachRun.run();
        }
        return totals;
    }

    /** Totals to which blocks can be added. */
    public StudyTotals noRuns() {
        return new StudyTotals(numbers.ways().size());
    }

    /**
     * What the runs say.
     *
     * @param totals at least two runs
     */
    public StudyResult result(StudyTotals totals) {
        return new Reporting(request, numbers, totals).result();
    }
}
