package org.lowfirst.planning.contents;

/** What to make of a difference between what was expected and what was read. */
public enum VerdictCode {
    /** Gauges, thermometers and volumes explain it. */
    INSIDE_GAUGE_UNCERTAINTY(false),
    /**
     * More than they usually do, less than proof: read again, settled and near the temperature of the earlier reading.
     * Settled, because warm gas hides a loss; near the same temperature, because then nothing has to be converted.
     */
    WATCH(false),
    LIKELY_LEAK(true),
    LIKELY_WRONG_VOLUME(true),
    LIKELY_WRONG_VALVE_OR_UNRECORDED_FILL(true),
    GAUGE_DISAGREES(true);

    private final boolean accuses;

    VerdictCode(boolean accuses) {
        this.accuses = accuses;
    }

    /** Whether it names a cause; these are the verdicts the false-alarm rate counts. */
    public boolean accuses() {
        return accuses;
    }
}
