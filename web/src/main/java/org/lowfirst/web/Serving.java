package org.lowfirst.web;

import java.net.URI;

/** What came of the wish to serve. */
public sealed interface Serving {

    /**
     * The pages are being served.
     *
     * @param url address of the first page, with the port really in use
     * @param stop finishes what is under way and stops
     */
    record Started(URI url, Runnable stop) implements Serving, AutoCloseable {
        @Override
        public void close() {
            stop.run();
        }
    }

    /**
     * Nothing is being served.
     *
     * @param why one sentence: what was wrong; perhaps a second line with what to do
     */
    record Refused(String why) implements Serving {}
}
