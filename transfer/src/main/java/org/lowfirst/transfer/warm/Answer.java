package org.lowfirst.transfer.warm;

import java.util.function.Function;

/**
 * What came of a question about warm gas: the answer, or why there is none.
 *
 * @param <T> type of the answer
 */
public sealed interface Answer<T> {

    /** The answer. */
    record Given<T>(T value) implements Answer<T> {}

    /** There is none; nothing was changed. */
    record Refused<T>(WarmRefusal refusal) implements Answer<T> {}

    static <T> Answer<T> of(T value) {
        return new Given<>(value);
    }

    static <T> Answer<T> refused(WarmRefusal refusal) {
        return new Refused<>(refusal);
    }

    /** Applies {@code next} to the answer, or passes the refusal on. */
    @SuppressWarnings("unchecked")
    default <R> Answer<R> then(Function<? super T, Answer<R>> next) {
        return this instanceof Given<T> given ? next.apply(given.value()) : (Answer<R>) this;
    }

    /** Maps the answer, or passes the refusal on. */
    default <R> Answer<R> map(Function<? super T, ? extends R> change) {
        return then(value -> new Given<>(change.apply(value)));
    }

    /**
     * The answer, for callers that have checked their inputs before.
     *
     * @throws IllegalArgumentException when there is none, saying why
     */
    default T orElseThrow() {
        if (this instanceof Given<T> given) {
            return given.value();
        }
        throw new IllegalArgumentException("No answer: " + this);
    }
}
