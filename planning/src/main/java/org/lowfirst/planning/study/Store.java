package org.lowfirst.planning.study;

/** Full supplies beside the bank, and what is on its way. Mutable, used by one thread. */
final class Store {

    private final int stored;
    private final int together;
    private final double[] full_molPerM3;
    private int fulls;

    private final double[] arrives_d;
    private final int[] supplies;
    private int first;
    private int deliveries;
    private int onOrder;

    Store(int stored, int together, int places) {
        this.stored = stored;
        this.together = together;
        full_molPerM3 = new double[stored];
        arrives_d = new double[places + together];
        supplies = new int[places + together];
    }

    int stored() {
        return stored;
    }

    int fulls() {
        return fulls;
    }

    void keep(double rho_molPerM3) {
        full_molPerM3[fulls++] = rho_molPerM3;
    }

    double take() {
        return full_molPerM3[--fulls];
    }

    double sum_molPerM3() {
        double sum = 0.0;
        for (int i = 0; i < fulls; i++) {
            sum += full_molPerM3[i];
        }
        return sum;
    }

    /**
     * Sends for what is missing, when enough for one delivery is missing, or when the bank waits and nothing is on its way.
     *
     * @param bankWaits whether the bank waits for a full supply
     */
    void order(double arrival_d, boolean bankWaits) {
        int forBank = bankWaits ? Math.max(1, together - stored) : 0;
        int missing = stored - fulls + forBank - onOrder;
        if (missing >= together || (bankWaits && missing > 0 && onOrder == 0)) {
            int last = (first + deliveries++) % arrives_d.length;
            arrives_d[last] = arrival_d;
            supplies[last] = missing;
            onOrder += missing;
        }
    }

    /** Days since the start of the run; infinite when nothing is on its way. */
    double nextArrival_d() {
        return deliveries == 0 ? Double.POSITIVE_INFINITY : arrives_d[first];
    }

    /** Takes the next delivery off the list; answers how many supplies it brings. */
    int arrived() {
        int brought = supplies[first];
        first = (first + 1) % arrives_d.length;
        deliveries--;
        onOrder -= brought;
        return brought;
    }
}
