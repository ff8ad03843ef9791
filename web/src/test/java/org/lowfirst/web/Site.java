package org.lowfirst.web;

import java.net.URI;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicLong;
import org.lowfirst.app.bench.Benches;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.Opening;
import org.lowfirst.gas.Oxygen;

/** The pages over an empty database, as people run them, with a clock that tests can move. */
final class Site implements AutoCloseable {

    private final Benches benches;
    private final Serving.Started serving;
    private final MovableClock clock;

    private Site(Benches benches, Serving.Started serving, MovableClock clock) {
        this.benches = benches;
        this.serving = serving;
        this.clock = clock;
    }

    static Site over(Path directory) {
        MovableClock clock = new MovableClock(Clock.systemUTC());
        if (!(Journal.open(directory.resolve("lowfirst.db")) instanceof Opening.Opened opened)) {
            throw new AssertionError("no journal in " + directory);
        }
        Benches benches = new Benches(opened.journal(), clock, Oxygen.schmidtWagner(), Locale.ENGLISH);
        AtomicLong ids = new AtomicLong();
        Serving serving = WebApplication.start(
                new ServeRequest("127.0.0.1", 0, benches, clock, () -> "k" + ids.incrementAndGet()));
        if (!(serving instanceof Serving.Started started)) {
            throw new AssertionError(serving);
        }
        return new Site(benches, started, clock);
    }

    /** The same with a bench to look at, see {@link Sample}. */
    static Site withSample(Path directory) {
        Site site = over(directory);
        Sample.enter(site.benches, site.clock.instant());
        return site;
    }

    /** The same with another bottle, see {@link Sample#enterWithTwoBottles}. */
    static Site withSampleOfTwoBottles(Path directory) {
        Site site = over(directory);
        Sample.enterWithTwoBottles(site.benches, site.clock.instant());
        return site;
    }

    /** The demo bench with its half year. */
    static Site withDemo(Path directory) {
        Site site = over(directory);
        site.benches.loadingTheDemoBench().load();
        return site;
    }

    /** The same with a bank that cannot bring the bottle to its target, see {@link Sample}. */
    static Site withSampleThatCannotReach(Path directory) {
        Site site = over(directory);
        Sample.enterOneThatCannotReach(site.benches, site.clock.instant());
        return site;
    }

    /** Address of a page. */
    String url(String path) {
        return serving.url().resolve(path).toString();
    }

    URI root() {
        return serving.url();
    }

    Benches benches() {
        return benches;
    }

    Instant now() {
        return clock.instant();
    }

    /** Fills M-03 of the usual bench from supply A to a reading [bar]. */
    void fill(String id, String bar) {
        Sample.fill(benches, clock.instant(), id, bar);
    }

    /** Lets time pass. */
    void waitMinutes(long minutes) {
        clock.move(minutes);
    }

    @Override
    public void close() {
        serving.close();
        benches.close();
    }

    private static final class MovableClock extends Clock {

        private final Clock start;
        private final AtomicLong moved = new AtomicLong();

        MovableClock(Clock start) {
            this.start = start;
        }

        void move(long minutes) {
            moved.addAndGet(minutes);
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return start.withZone(zone);
        }

        @Override
        public Instant instant() {
            return start.instant().plus(Duration.ofMinutes(moved.get()));
        }
    }
}
