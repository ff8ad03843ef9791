package org.lowfirst.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Ctrl-C during a long computation: asks it to stop and holds the process until the best so far is printed. To be closed when it
 * is printed.
 */
final class Interruption implements AutoCloseable {

    private static final long LONGEST_WAIT_S = 20;

    private final CountDownLatch printed = new CountDownLatch(1);
    private final Thread hook = new Thread(this::stop, "interruption");
    private volatile boolean asked;

    private Interruption() {}

    static Interruption watched() {
        Interruption interruption = new Interruption();
        Runtime.getRuntime().addShutdownHook(interruption.hook);
        return interruption;
    }

    /** Whether somebody pressed Ctrl-C. */
    boolean asked() {
        return asked;
    }

    private void stop() {
        asked = true;
        try {
            if (!printed.await(LONGEST_WAIT_S, TimeUnit.SECONDS)) {
                Thread.currentThread().interrupt();
            }
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        printed.countDown();
        if (!asked) {
            Runtime.getRuntime().removeShutdownHook(hook);
        }
    }
}
