package org.lowfirst.planning.contents;

import java.util.List;

/** Readings of one cylinder that stayed shut between them, compared through the real-gas equation. */
public final class ReadingComparison {

    private final Surroundings surroundings;
    private final ContentsAssumptions assumptions;

    public ReadingComparison(Surroundings surroundings, ContentsAssumptions assumptions) {
        this.surroundings = surroundings;
        this.assumptions = assumptions;
    }

    /**
     * The verdict on the last of several readings.
     *
     * @param cylinder the cylinder
     * @param readings accepted readings in order of time, at least one
     */
    public Verdict compare(MeteredCylinder cylinder, List<ContentsMeasurement> readings) {
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("The readings (0) must be at least one.");
        }
        LossSeries series = new LossSeries(assumptions);
        readings.forEach(series::read);
        return new SeriesJudge(new ShownPressure(surroundings), assumptions.verdicts()).judge(cylinder, series);
    }
}
