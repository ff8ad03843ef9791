package org.lowfirst.planning.study;

import java.util.ArrayList;
import java.util.List;
import org.lowfirst.planning.study.kernel.Percentiles;

/**
 * What many runs add up to, in a size that does not grow with the runs. Mutable, used by one thread. Two can be joined; joined in
 * the same order they give the same digits.
 */
public final class StudyTotals {

    private static final Measure[] MEASURES = Measure.values();

    private final int ways;
    private final Moments costsAndFills;
    private final List<Moments> measures = new ArrayList<>();
    private final List<Percentiles> costPerFill = new ArrayList<>();
    private double worstImbalance;

    StudyTotals(int ways) {
        this.ways = ways;
        costsAndFills = new Moments(2 * ways);
        for (int i = 0; i < ways; i++) {
            measures.add(new Moments(Measure.COUNT));
            costPerFill.add(new Percentiles());
        }
    }

    /** Adds a run: one ledger for each alternative. */
    void add(List<RunLedger> run) {
        double[] together = new double[2 * ways];
        double[] sums = new double[Measure.COUNT];
        for (int i = 0; i < ways; i++) {
            RunLedger ledger = run.get(i);
            for (Measure measure : MEASURES) {
                sums[measure.place()] = ledger.of(measure);
            }
            measures.get(i).add(sums);
            together[2 * i] = ledger.of(Measure.COST);
            together[2 * i + 1] = ledger.of(Measure.FILLS);
            if (ledger.of(Measure.FILLS) > 0) {
                costPerFill.get(i).add(ledger.of(Measure.COST) / ledger.of(Measure.FILLS));
            }
            worstImbalance = Math.max(worstImbalance, ledger.imbalance());
        }
        costsAndFills.add(together);
    }

    /** Joins the runs of another part of the same study. */
    public void add(StudyTotals other) {
        costsAndFills.add(other.costsAndFills);
        for (int i = 0; i < ways; i++) {
            measures.get(i).add(other.measures.get(i));
            costPerFill.get(i).add(other.costPerFill.get(i));
        }
        worstImbalance = Math.max(worstImbalance, other.worstImbalance);
    }

    public long runs() {
        return costsAndFills.count();
    }

    /** The largest share of its gas that any run lost track of; rounding only. */
    public double worstImbalance() {
        return worstImbalance;
    }

    /** Mean of a measure over the runs. */
    double mean(int way, Measure measure) {
        return measures.get(way).mean(measure.place());
    }

    Estimate of(int way, Measure measure) {
        return measures.get(way).of(measure.place());
    }

    Estimate ratio(int way, Measure over, Measure under) {
        return measures.get(way).ratio(over.place(), under.place());
    }

    /** Cost per fill of one alternative less that of another, met by the same bottles. */
    Estimate costDifference(int way, int other) {
        return costsAndFills.difference(2 * way, 2 * way + 1, 2 * other, 2 * other + 1);
    }

    Percentiles costPerFill(int way) {
        return costPerFill.get(way);
    }
}
