package org.lowfirst.cli;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.UnknownHostException;

/** Picks the port when nobody asked for one. */
final class ServePort {

    /** The first port tried: a number of our own, above those that need rights. */
    static final int FIRST = 8744;

    private static final int TRIES = 20;

    private ServePort() {}

    /**
     * The first free port from {@code first} on; {@code first} itself when none of twenty is free, so that the refusal names it.
     *
     * @param bind address or name to listen on
     */
    static int freeFrom(int first, String bind) {
        for (int port = first; port < first + TRIES; port++) {
            if (isFree(port, bind)) {
                return port;
            }
        }
        return first;
    }

    private static boolean isFree(int port, String bind) {
        try (ServerSocket probe = new ServerSocket(port, 1, InetAddress.getByName(bind))) {
            return probe.isBound();
        } catch (UnknownHostException unknown) {
            return true; // serving will say so
        } catch (IOException taken) {
            return false;
        }
    }
}
