package org.lowfirst.station;

/**
 * Identity of a supply; made by whoever enters it, so that a retry names the same one.
 *
 * @param value 1 to 64 letters, digits, points, dashes or underscores
 */
public record SupplyId(String value) implements CylinderId {

    public SupplyId {
        IdText.checked("supply", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
