package org.lowfirst.app.file;

import org.lowfirst.app.sheet.Numerals;

/**
 * A quantity as a plan file states it.
 *
 * @param value the quantity
 * @param number the number as written, in {@code unit}
 * @param unit symbol of the unit, e.g. "psi"
 * @param place where it stands
 */
public record Measure<T>(T value, double number, String unit, Place place) {

    /** As a person would write it: number and unit. */
    public String written() {
        return Numerals.grouped(number) + " " + unit;
    }
}
