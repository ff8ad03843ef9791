package org.lowfirst.station;

/**
 * Identity of a bottle; made by whoever enters it, so that a retry names the same one.
 *
 * @param value 1 to 64 letters, digits, points, dashes or underscores
 */
public record BottleId(String value) implements CylinderId {

    public BottleId {
        IdText.checked("bottle", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
