package org.lowfirst.app.virtual;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.function.Supplier;

/** The time at a virtual bench, in UTC. */
public final class VirtualClock extends Clock {

    private final Supplier<Instant> now;
    private final ZoneId zone;

    /** @param now e.g. {@code bench::now} */
    public VirtualClock(Supplier<Instant> now) {
        this(now, ZoneOffset.UTC);
    }

    private VirtualClock(Supplier<Instant> now, ZoneId zone) {
        this.now = now;
        this.zone = zone;
    }

    @Override
    public ZoneId getZone() {
        return zone;
    }

    @Override
    public Clock withZone(ZoneId other) {
        return new VirtualClock(now, other);
    }

    @Override
    public Instant instant() {
        return now.get();
    }
}
