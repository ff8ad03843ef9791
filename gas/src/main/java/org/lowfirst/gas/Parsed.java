package org.lowfirst.gas;

import java.util.function.Function;

/**
 * What came of reading a quantity that somebody typed.
 *
 * @param <T> type of the quantity
 */
public sealed interface Parsed<T> {

    /**
     * It was understood.
     *
     * @param value the quantity
     * @param number the number as typed, in {@code unit}
     * @param unit symbol of the unit, e.g. "psi", "bara", "F"
     * @param text what was typed, unchanged
     */
    record Read<T>(T value, double number, String unit, String text) implements Parsed<T> {}

    /**
     * It was not understood.
     *
     * @param problem one sentence for the person who typed it
     * @param position where in {@code text} the trouble starts, from 0
     * @param text what was typed, unchanged
     */
    record Unreadable<T>(String problem, int position, String text) implements Parsed<T> {}

    /** Maps the quantity, or passes the problem on. */
    default <R> Parsed<R> map(Function<? super T, ? extends R> change) {
        if (this instanceof Read<T> read) {
            return new Read<>(change.apply(read.value()), read.number(), read.unit(), read.text());
        }
        Unreadable<T> unreadable = (Unreadable<T>) this;
        return new Unreadable<>(unreadable.problem(), unreadable.position(), unreadable.text());
    }

    /**
     * The quantity, for texts known to be good.
     *
     * @throws IllegalArgumentException when the text was not understood, saying why
     */
    default T orElseThrow() {
        if (this instanceof Read<T> read) {
            return read.value();
        }
        Unreadable<T> unreadable = (Unreadable<T>) this;
        throw new IllegalArgumentException(unreadable.problem());
    }
}
