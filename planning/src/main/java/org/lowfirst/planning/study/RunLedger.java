package org.lowfirst.planning.study;

/** The sums of one run of one alternative. */
public final class RunLedger {

    private final double[] sums = new double[Measure.COUNT];
    private double imbalance;

    /** The sum over the counted years. */
    public double of(Measure measure) {
        return sums[measure.place()];
    }

    /** Gas received less gas sent back, filled, vented and still there, as a share of the gas received and there before. */
    public double imbalance() {
        return imbalance;
    }

    void add(Measure measure, double more) {
        sums[measure.place()] += more;
    }

    void clear() {
        java.util.Arrays.fill(sums, 0.0);
    }

    void balance(double before_mol, double after_mol) {
        double in_mol = before_mol + of(Measure.RECEIVED_MOL);
        double out_mol = after_mol + of(Measure.SENT_BACK_MOL) + of(Measure.TO_BOTTLES_MOL) + of(Measure.VENTED_MOL);
        imbalance = Math.abs(in_mol - out_mol) / in_mol;
    }
}
