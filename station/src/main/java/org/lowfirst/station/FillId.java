package org.lowfirst.station;

/**
 * Identity of a fill; made by whoever asks for the fill, so that a retry names the same one.
 *
 * @param value 1 to 64 letters, digits, points, dashes or underscores
 */
public record FillId(String value) {

    public FillId {
        IdText.checked("fill", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
