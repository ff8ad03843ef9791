package org.lowfirst.station;

/**
 * Identity of a bench; made by whoever asks for the bench, so that a retry names the same one.
 *
 * @param value 1 to 64 letters, digits, points, dashes or underscores
 */
public record BenchId(String value) {

    public BenchId {
        IdText.checked("bench", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
