package org.lowfirst.web.session;

import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.lowfirst.gas.Amount;
import org.lowfirst.planning.session.SessionOutcome;
import org.lowfirst.planning.session.SessionWatch;

/** One search for the plan of a session, under way or done. Written by one thread, read by many. */
final class SessionSearch implements SessionWatch {

    private final CompletableFuture<SessionOutcome> outcome = new CompletableFuture<>();
    private volatile boolean enough;
    private volatile SoFar soFar = new SoFar(0, 0, Amount.NONE, 0);

    @Override
    public boolean goOn(SoFar now) {
        soFar = now;
        return !enough;
    }

    SoFar soFar() {
        return soFar;
    }

    /** Asks for the best plan so far. */
    void stop() {
        enough = true;
    }

    boolean stopped() {
        return enough;
    }

    void end(SessionOutcome came) {
        outcome.complete(came);
    }

    void fail(Throwable why) {
        outcome.completeExceptionally(why);
    }

    /** Whether it is through after at most this long. */
    boolean doneWithin(Duration longest) {
        try {
            outcome.get(longest.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException stillSearching) {
            return false;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        } catch (ExecutionException failed) {
            return true;
        }
        return true;
    }

    /** What came of it; only when it is done. */
    SessionOutcome outcome() {
        return outcome.join();
    }
}
