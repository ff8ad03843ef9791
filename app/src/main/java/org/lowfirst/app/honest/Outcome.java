package org.lowfirst.app.honest;

import java.util.function.Function;

/**
 * What came of asking: a value, or what is wrong with the question.
 *
 * @param <T> type of the value
 */
public sealed interface Outcome<T> {

    /** The value. */
    record Given<T>(T value) implements Outcome<T> {}

    /** There is none; nothing was changed. */
    record Declined<T>(Problem problem) implements Outcome<T> {}

    static <T> Outcome<T> of(T value) {
        return new Given<>(value);
    }

    static <T> Outcome<T> declined(Problem problem) {
        return new Declined<>(problem);
    }

    /** Applies {@code next} to the value, or passes the problem on. */
    @SuppressWarnings("unchecked")
    default <R> Outcome<R> then(Function<? super T, Outcome<R>> next) {
        return this instanceof Given<T> given ? next.apply(given.value()) : (Outcome<R>) this;
    }

    /** Maps the value, or passes the problem on. */
    default <R> Outcome<R> map(Function<? super T, ? extends R> change) {
        return then(value -> new Given<>(change.apply(value)));
    }
}
