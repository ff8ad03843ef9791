package org.lowfirst.station.rules;

/**
 * A plus-rating entered for one cylinder. The plus on the stamp alone counts for nothing.
 *
 * @param source document that says all its conditions are met
 * @param enteredBy who entered it
 */
public record PlusEntry(String source, String enteredBy) {

    public PlusEntry {
        if (source.isBlank() || enteredBy.isBlank()) {
            throw new IllegalArgumentException("The source and the author of a plus-rating must be named.");
        }
    }
}
