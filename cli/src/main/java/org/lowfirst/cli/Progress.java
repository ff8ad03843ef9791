package org.lowfirst.cli;

import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/** A line of progress now and then, and whether the time is up. Nothing is shown of what takes less than a second. */
final class Progress {

    private static final double FIRST_S = 1.0;
    private static final double EVERY_S = 1.0;

    private final Terminal terminal;
    private final @Nullable Double most_s;
    private final long start_ns = System.nanoTime();
    private double shown_s;

    /** @param most_s seconds it may take; null for no limit */
    Progress(Terminal terminal, @Nullable Double most_s) {
        this.terminal = terminal;
        this.most_s = most_s;
    }

    /**
     * Shows how far it is, when it is time to.
     *
     * @param what how far it is, e.g. "run 400 of 1,000"
     * @param share how much is done, from 0 to 1; 0 when that is not known
     */
    void at(String what, double share) {
        double now_s = seconds();
        if (now_s < FIRST_S || now_s - shown_s < EVERY_S) {
            return;
        }
        shown_s = now_s;
        String left = share > 0.0 ? String.format(Locale.ROOT, ", about %.0f s left", now_s / share - now_s) : "";
        terminal.err().println(what + left);
        terminal.err().flush();
    }

    boolean timeIsUp() {
        return most_s != null && seconds() >= most_s;
    }

    private double seconds() {
        return (System.nanoTime() - start_ns) / (double) TimeUnit.SECONDS.toNanos(1);
    }
}
