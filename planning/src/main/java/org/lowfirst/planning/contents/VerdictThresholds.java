package org.lowfirst.planning.contents;

/**
 * When a surprise is worth a word.
 *
 * @param watchChance at or below this chance of noise: watch
 * @param likelyChance at or below this chance of noise: a cause is named
 * @param preference natural logarithm of the likelihood ratio by which another cause must beat a leak
 * @param windowReadings onsets looked back to, in readings
 * @param scatterReadings how many readings the assumed scatter counts as when a series scatters more
 */
public record VerdictThresholds(
        double watchChance, double likelyChance, double preference, int windowReadings, double scatterReadings) {

    public VerdictThresholds {
        if (!(likelyChance > 0.0 && likelyChance < watchChance && watchChance < 0.5)) {
            throw new IllegalArgumentException("The chances (likely " + likelyChance + ", watch " + watchChance
                    + ") must rise between 0 and 0.5.");
        }
        if (!(preference >= 0.0) || windowReadings < 2 || !(scatterReadings > 0.0)) {
            throw new IllegalArgumentException(
                    "The preference (" + preference + ") must be at least 0 and the window (" + windowReadings
                            + " readings) at least 2, the scatter (" + scatterReadings + " readings) above 0.");
        }
    }

    static VerdictThresholds read(SettingsFile file) {
        return new VerdictThresholds(
                file.positive("verdict.watch.chance"),
                file.positive("verdict.likely.chance"),
                file.positive("verdict.preference.logRatio"),
                (int) file.positive("verdict.window.readings"),
                file.positive("verdict.scatter.readings"));
    }
}
