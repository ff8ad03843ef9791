package org.lowfirst.planning.contents;

/**
 * How much gas is in a cylinder, as far as is known. A normal distribution; near empty its lower part lies below zero, which
 * is how the spread shows itself and is not cut off.
 *
 * @param mean_mol best estimate [mol], finite
 * @param standardDeviation_mol of the estimate [mol], finite, at least 0
 */
public record ContentsEstimate(double mean_mol, double standardDeviation_mol) {

    public ContentsEstimate {
        if (!Double.isFinite(mean_mol) || !(standardDeviation_mol >= 0.0) || Double.isInfinite(standardDeviation_mol)) {
            throw new IllegalArgumentException("The estimate (" + mean_mol + " +/- " + standardDeviation_mol
                    + " mol) must be finite with a spread of at least 0.");
        }
    }

    /** Half-width that covers the true amount with 95 % chance [mol]. */
    public double halfWidth95_mol() {
        return Gaussian.TWO_SIDED_95 * standardDeviation_mol;
    }
}
