package org.lowfirst.transfer.warm;

/**
 * One figure of a datasheet.
 *
 * @param name what it is called in the file
 * @param value the number, in {@code unit}
 * @param unit unit as written in the file; "1" for a pure number
 * @param range where it applies, in words
 * @param status how far it can be relied on
 * @param source key of docs/references.bib, or words when there is none
 */
public record Figure(String name, double value, String unit, String range, Status status, String source) {}
