package org.lowfirst.planning.study;

import org.lowfirst.planning.study.kernel.Draws;

/** The kinds of chance in a run, each with random numbers of its own. */
enum Stream {
    BOTTLES(0),
    WEATHER(1),
    BUSINESS(2),
    DELIVERIES(3);

    private static final int KINDS = values().length;

    private final int number;

    Stream(int number) {
        this.number = number;
    }

    Draws of(long seed, long run) {
        return new Draws(seed, run * KINDS + number);
    }

    /** The same number at a place of the stream, whoever asks and when. */
    double uniformAt(long seed, long run, long place) {
        return Draws.uniformAt(seed, run * KINDS + number, place);
    }
}
