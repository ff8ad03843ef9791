package org.lowfirst.gas;

import java.util.function.Function;

/**
 * What came of evaluating a property: a value, or the reason there is none. Never NaN, never a clamped value.
 *
 * @param <T> type of the value
 */
public sealed interface Evaluated<T> {

    /** The value was found. */
    record Value<T>(T value) implements Evaluated<T> {}

    /**
     * An input lies outside the range the equation is made for.
     *
     * @param quantity what was out of range, e.g. "temperature"
     * @param measured its value, in {@code unit}
     * @param lowest lowest accepted value, in {@code unit}
     * @param highest highest accepted value, in {@code unit}
     * @param unit symbol of the unit of the three numbers
     */
    record OutOfRange<T>(String quantity, double measured, double lowest, double highest, String unit)
            implements Evaluated<T> {}

    /** The search ended without an answer. */
    record NotConverged<T>(String searched, int iterations, double residual) implements Evaluated<T> {}

    /**
     * The value, for callers that have checked the range before.
     *
     * @return the value
     * @throws IllegalArgumentException when there is none, saying why
     */
    default T orElseThrow() {
        if (this instanceof Value<T> found) {
            return found.value();
        }
        throw new IllegalArgumentException("No value: " + this);
    }

    /** Applies {@code next} to the value, or passes the reason on. */
    @SuppressWarnings("unchecked")
    default <R> Evaluated<R> then(Function<? super T, Evaluated<R>> next) {
        return this instanceof Value<T> found ? next.apply(found.value()) : (Evaluated<R>) this;
    }

    /** Maps the value, or passes the reason on. */
    default <R> Evaluated<R> map(Function<? super T, ? extends R> change) {
        return then(value -> new Value<>(change.apply(value)));
    }
}
